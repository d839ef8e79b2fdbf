// The eye as a teardrop: rope round a pin, closed by straight legs that meet at the throat.
#pragma once

#include "libsplice/units/quantity.h"

#include <optional>

namespace libsplice {

/// A closed eye. All lengths are of the rope's centreline.
struct Teardrop {
    Length rope_round;  ///< throat to throat, round the pin
    Angle throat_angle; ///< included angle of the legs at the throat
};

/// The rope in an eye round a pin of diameter `pin` (0: a soft eye, the tightest bight), of rope of
/// diameter `diameter`, whose throat lies `throat_distance` from the pin's centre with the legs'
/// centrelines `leg_offset` off the axis there (half a rope diameter where the legs touch, 0 where
/// they are drawn to one line). Nothing if the throat is nearer than the centreline radius
/// (pin + diameter) / 2. Plain geometry: with R = (pin + diameter)/2, rho = sqrt(h^2 + w^2) and
/// beta = asin(R/rho) - atan(w/h), the rope is R(pi + 2 beta) + 2 sqrt(rho^2 - R^2).
[[nodiscard]] std::optional<Teardrop> teardrop_eye(Length pin, Length diameter,
                                                   Length throat_distance, Length leg_offset);

/// The inverse: how far from the pin's centre the throat lies when `rope_round` is the rope from
/// throat to throat. Nothing if that is less than the eye's tightest, h = R.
[[nodiscard]] std::optional<Length> throat_distance(Length pin, Length diameter, Length rope_round,
                                                    Length leg_offset);

} // namespace libsplice
