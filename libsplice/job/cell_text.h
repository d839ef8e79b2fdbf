// What any cell of a job file may hold, whichever way it was written.
#pragma once

#include "libsplice/base/fault.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace libsplice {

/// Longest text of a cell, in bytes.
inline constexpr std::size_t longest_cell = std::size_t{64} * 1024;
/// Most cells of a row.
inline constexpr std::size_t most_cells = 1000;

/// The fault of a cell's text: longer than `longest_cell` (Code::cell_too_long), not UTF-8 or
/// holding a zero byte (Code::not_utf8); nothing if it can be used. The fault has no place; the
/// caller knows it.
[[nodiscard]] std::optional<Fault> text_fault(std::string_view text);

/// The fault of a cell that is too long to be kept.
[[nodiscard]] Fault too_long_fault();

} // namespace libsplice
