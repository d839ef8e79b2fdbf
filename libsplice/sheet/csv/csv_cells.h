// Cells of a CSV row, appended to a buffer that is used again.
#pragma once

#include "libsplice/units/quantity.h"
#include "libsplice/units/show.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace libsplice {

/// Appends text: quoted where it must be (RFC 4180), and with `'` in front where a spreadsheet
/// would take it for a formula (it starts with `=`, `+`, `-` or `@`).
void append_text_cell(std::string& row, std::string_view text);

/// Appends a length as a plain number: metres, exact, or inches with four places.
void append_length_cell(std::string& row, Nanometres length, UnitSystem units);

/// Appends the shortest number that reads back the same.
void append_number_cell(std::string& row, double value);
void append_number_cell(std::string& row, std::int64_t value);

/// `_m` or `_in`, for headings.
[[nodiscard]] constexpr std::string_view length_suffix(UnitSystem units) {
    return units == UnitSystem::metric ? "_m" : "_in";
}

} // namespace libsplice
