// Text for a browser: what a user wrote stays text, whatever is in it.
#pragma once

#include <string>
#include <string_view>

namespace libsplice {

/// With `& < > " '` as entities and control bytes shown as `\x1b`; good between tags and inside
/// quotes.
[[nodiscard]] std::string html_text(std::string_view text);

} // namespace libsplice
