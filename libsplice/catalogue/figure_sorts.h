// What a figure counts in, and the units that it can be printed in.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// The unit a figure is printed in.
enum class FigureUnit : std::uint8_t {
    none,
    percent,
    diameters,
    picks,
    mm,
    cm,
    m,
    in,
    ft,
    degrees,
    newtons,
    lbf
};
[[nodiscard]] std::optional<FigureUnit> read_figure_unit(std::string_view name);
[[nodiscard]] std::string_view name_of(FigureUnit unit);

/// What a figure counts in. A length that is used as a share would be nonsense.
enum class FigureSort : std::uint8_t {
    length,    ///< a length, or rope diameters
    reach,     ///< the same, or picks of the braid
    share,     ///< of a length, a strength or a pull: percent, or a number up to 1
    count,     ///< a number without a unit
    diameters, ///< rope diameters only
    picks,     ///< picks of the braid only
    angle,     ///< degrees
    force,     ///< newtons or pounds-force
};
/// The units that figures of a sort can be printed in.
[[nodiscard]] std::span<const FigureUnit> units_of(FigureSort sort);

} // namespace libsplice
