// The words of units: each with what one of it is in SI.
#pragma once

#include "libsplice/units/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A unit as people write it.
struct Unit {
    std::string_view word;
    double si = 1.0; ///< what one of it is in the SI unit
};

/// A unit of length as written: the heading `length [m]` or the `mm` of `60 mm`.
enum class LengthUnit : std::uint8_t { mm, cm, m, in, ft };

/// The units of length, in the order of LengthUnit.
inline constexpr std::array length_units{Unit{"mm", 0.001}, Unit{"cm", 0.01}, Unit{"m", 1.0},
                                         Unit{"in", metres_per_inch},
                                         Unit{"ft", 12.0 * metres_per_inch}};
static_assert(length_units.size() == static_cast<std::size_t>(LengthUnit::ft) + 1);

/// The units of force; a kilogram is the pull of its weight.
inline constexpr std::array force_units{Unit{"N", 1.0},
                                        Unit{"daN", 10.0},
                                        Unit{"kN", 1000.0},
                                        Unit{"kgf", newtons_per_kgf},
                                        Unit{"kg", newtons_per_kgf},
                                        Unit{"lbf", newtons_per_lbf}};

/// The units of a metre's mass.
inline constexpr std::array mass_units{
    Unit{"g/m", 0.001}, Unit{"kg/m", 1.0}, Unit{"kg/100m", 0.01},
    Unit{"lb/100ft", newtons_per_lbf / newtons_per_kgf / (1200.0 * metres_per_inch)}};

/// The unit of `units` that is called `word`, or null.
[[nodiscard]] const Unit* find_unit(std::span<const Unit> units, std::string_view word);
/// The words of `units`, in their order.
[[nodiscard]] std::vector<std::string_view> words_of(std::span<const Unit> units);
/// `N, kN and kgf`.
[[nodiscard]] std::string listed_units(std::span<const Unit> units);

/// The unit of length named by `text`, or nothing.
[[nodiscard]] std::optional<LengthUnit> read_length_unit(std::string_view text);
[[nodiscard]] constexpr std::string_view name_of(LengthUnit unit) {
    return length_units.at(static_cast<std::size_t>(unit)).word;
}

} // namespace libsplice
