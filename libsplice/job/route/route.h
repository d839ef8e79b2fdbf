// A line's way on the boat, which a job may give in place of a length.
#pragma once

#include "libsplice/base/place.h"
#include "libsplice/units/quantity.h"

#include <array>
#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

namespace libsplice {

/// A place on the boat where the line starts, turns or ends: the corner of the straight legs, where
/// the rope would turn if it had no thickness and the sheave no diameter.
struct RoutePoint {
    std::array<Length, 3> at{};   ///< x, y, z; z is 0 where a job gives two
    std::optional<Length> sheave; ///< diameter of the sheave or pin it turns on
    Place place;
};

/// From point to point.
struct PointRoute {
    std::vector<RoutePoint> points; ///< two or more
};

/// One row of eyelets along a straight or curved edge.
struct EyeletRow {
    std::vector<RoutePoint> points;   ///< the edge, two or more points
    std::optional<std::size_t> count; ///< eyelets spaced evenly along it; none: the points are they
    Place place;
};

/// A lacing. Which members count depends on the pattern; the others are 0.
struct LacingRoute {
    enum class Pattern : unsigned char { zigzag, rail, criss_cross, straight, spiral };
    Pattern pattern{};
    std::size_t count = 0; ///< zigzag: legs; rail: loops; criss-cross, straight: pairs of eyelets
    double turns = 0.0;    ///< spiral
    Length gap;            ///< row to row; rail: eyelet's centre to the rail's
    Length pitch;  ///< along the edge: zigzag a leg, else from one eyelet or turn to the next
    Length around; ///< diameter of the pins or eyelet edges (zigzag), of the rail (rail, spiral)
    std::vector<EyeletRow> rows; ///< in place of count, gap and pitch: two rows, one for a rail
};

/// A sheave of a purchase as it is rigged.
struct PurchaseSheave {
    Length size; ///< diameter where the rope lies
    Angle turn;  ///< how far the rope goes round it
};

/// A purchase, in its longest, eased state.
struct PurchaseRoute {
    std::size_t parts = 0;
    Length run;                          ///< axle to axle of the two blocks, eased
    std::optional<Length> hauled;        ///< axle to axle, hauled in
    Length becket;                       ///< the dead end lies so much nearer the other block
    std::optional<Length> sheave;        ///< one size for all, a half turn at each
    std::vector<PurchaseSheave> sheaves; ///< else as they are rigged
    Length lead;                         ///< from the last sheave to the cleat
    Length tail;                         ///< for the hand, beyond the lead
};

/// A way of one of these sorts.
struct Route {
    std::variant<PointRoute, LacingRoute, PurchaseRoute> way;
    Place at;
};

} // namespace libsplice
