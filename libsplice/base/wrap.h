// Text broken into lines that fit a width.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace libsplice {

/// Breaks `text` at blanks into lines of at most `width` characters; the first line is taken to
/// start at column `first_indent`, the others get `rest_indent` blanks. A word longer than a line
/// is broken. The text must be UTF-8; there is no line end after the last line.
[[nodiscard]] std::string wrapped(std::string_view text, std::size_t width,
                                  std::size_t first_indent, std::size_t rest_indent);

} // namespace libsplice
