// The determinant of a knot: a whole number that a rope keeps however it is drawn up.
#pragma once

#include "libsplice/mechanics/knots/curve.h"

#include <cstdint>
#include <optional>

namespace libsplice {

/// The absolute value of the knot's Alexander polynomial at -1: 1 for no knot, 3 for an overhand, 5
/// for a figure-eight. It is computed in whole numbers from the crossings that one projection
/// shows. The ends of an open curve lead away from the rest, on along the line between them.
/// Nothing where no projection tried shows the crossings apart (strands that touch), where they are
/// more than can be dealt with, or where the number is over 10^9.
[[nodiscard]] std::optional<std::int64_t> knot_determinant(const Curve& curve);

} // namespace libsplice
