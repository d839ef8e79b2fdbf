// From any line of points to a loose rope that can be pulled: ends led away, strands apart.
#pragma once

#include "libsplice/mechanics/knots/curve.h"

#include <cstddef>
#include <cstdint>
#include <variant>

namespace libsplice {

/// Why a line of points is no rope to pull.
enum class LooseError : std::uint8_t {
    too_few,      ///< fewer than two points that differ
    too_many,     ///< more than `most_points`
    too_short,    ///< shorter than a thousandth of a rope diameter
    strands_meet, ///< two strands touch or cross, or an end leads on into the rest
    too_tangled,  ///< its strands lie so close for its length that it grew too long to pull
};

/// The most points of a line: the distances between all pairs of its segments are looked at.
inline constexpr std::size_t most_points = 4000;

/// An open line as a loose rope: each end led on straight, in its last direction, until it is clear
/// of the rest, then away from the other; the whole made larger until strands are two diameters
/// apart or more, and smaller where it is drawn far more openly than that. Its knot is that of the
/// line, and its ends lead away.
[[nodiscard]] std::variant<Curve, LooseError> loose_rope(std::vector<Point> line);

/// A closed line made larger likewise.
[[nodiscard]] std::variant<Curve, LooseError> loose_ring(std::vector<Point> line);

} // namespace libsplice
