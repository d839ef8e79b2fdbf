// Lengths in a column whose head names the unit once.
#pragma once

#include "libsplice/units/show.h"

#include <string>
#include <string_view>

namespace libsplice {

/// Whole millimetres (`8240`), or inches to the sixteenth (`324 7/16`): what is read off a tape.
[[nodiscard]] std::string tape_cell(Nanometres length, UnitSystem units);
/// The same as a length.
[[nodiscard]] Nanometres on_tape(Nanometres length, UnitSystem units);
/// `mm` or `in`.
[[nodiscard]] std::string_view tape_unit(UnitSystem units);

/// Metres with three places (`0.760`), or feet and inches: what is read on a wall.
[[nodiscard]] std::string metre_cell(Nanometres length, UnitSystem units);
/// `m`, or nothing where each cell carries its own units.
[[nodiscard]] std::string_view metre_unit(UnitSystem units);

} // namespace libsplice
