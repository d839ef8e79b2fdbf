// A line's way from point to point, round the sheaves between them.
#pragma once

#include "libsplice/mechanics/routes/polyline.h"
#include "libsplice/mechanics/routes/way.h"

#include <optional>
#include <span>

namespace libsplice {

/// A point of a way: the corner of the straight legs' centrelines, where the rope would turn if it
/// had no thickness and the sheave no diameter.
struct WayPoint {
    Position at;
    std::optional<Length> sheave = {}; ///< diameter where the rope lies; none: a plain corner
};

/// The rope along `way`, in the plane or in space, for a rope of diameter `diameter` (0 or more, as
/// the sheaves). At a sheave where the line turns by phi, with R = (sheave + rope)/2, either leg
/// ends R tan(phi/2) before the corner and an arc of R phi joins them; a plain corner takes no arc.
/// Faults: too_few (fewer than two points), same_place, sheave_at_end, turns_right_back and
/// bends_overlap (also where a bend takes more than the whole leg to the line's end).
/// Elementary geometry.
[[nodiscard]] OrWayFault<WayLength> route_length(std::span<const WayPoint> way, Length diameter);

} // namespace libsplice
