// Areas, winds and masses: what the load of a line is worked out from.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/units/quantity.h"

#include <string_view>

namespace libsplice {

using Area = Quantity<struct AreaDimension>;     ///< square metres
using Speed = Quantity<struct SpeedDimension>;   ///< metres per second
using Mass = Quantity<struct MassDimension>;     ///< kilograms
using Moment = Quantity<struct MomentDimension>; ///< newton metres

/// Exact: metres per second in a knot (1,852 m an hour).
inline constexpr double metres_per_second_per_knot = 1852.0 / 3600.0;

/// Reads `18 m2`, `18 m²`, `190 ft2`, `190 ft²`; more than zero. Code::not_a_number, with a hint.
[[nodiscard]] Result<Area> read_area(std::string_view text);

/// Reads a wind: `20 kn` or `10 m/s`; zero is allowed. A bare number is refused, because knots and
/// metres per second are easily mistaken for one another. Code::not_a_number.
[[nodiscard]] Result<Speed> read_speed(std::string_view text);

/// Reads `107 kg` or `236 lb`; more than zero. Code::not_a_number.
[[nodiscard]] Result<Mass> read_mass(std::string_view text);

/// Reads an angle in degrees, `90` or `90 deg` or `90°`, from 0 to 180. Code::not_a_number.
[[nodiscard]] Result<Angle> read_degrees(std::string_view text);

} // namespace libsplice
