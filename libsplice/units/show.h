// Lengths and forces as a bench reads them.
#pragma once

#include "libsplice/units/quantity.h"

#include <cstdint>
#include <string>

namespace libsplice {

enum class UnitSystem : std::uint8_t { metric, imperial };

/// Metric: whole millimetres below one metre (`875 mm`), metres with three places from there on
/// (`16.480 m`). Imperial: inches to the sixteenth (`3 7/16 in`), feet and inches from one foot on
/// (`54 ft 0 13/16 in`). Never both on one page. Negative lengths carry a minus sign.
[[nodiscard]] std::string show_length(Length length, UnitSystem units);
[[nodiscard]] std::string show_length(Nanometres length, UnitSystem units);

/// A spread or other small length: tenths of a millimetre (`3.4 mm`) or thousandths of an inch
/// (`0.134 in`).
[[nodiscard]] std::string show_fine(Length length, UnitSystem units);

/// `44 N (4.5 kgf)` or `10 lbf`.
[[nodiscard]] std::string show_force(Force force, UnitSystem units);

/// Appends metres as a decimal number with nine places at the most and no trailing zeros: exact,
/// since the count is whole (`6.475`, `0.08791446`). Used for JSON and CSV.
void append_metres(std::string& text, Nanometres count);

/// The number with up to `places` decimals, trailing zeros dropped.
[[nodiscard]] std::string show_number(double value, int places);

} // namespace libsplice
