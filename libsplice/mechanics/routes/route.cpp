// Tangents between sheaves and arcs round them, along the centreline of the rope.
#include "libsplice/mechanics/routes/route.h"

#include <gsl/assert>

#include <cmath>
#include <numbers>

namespace libsplice {

namespace {

/// Half a turn less this has a tangent that no boat has room for.
constexpr double right_back = std::numbers::pi - 1e-6;

std::optional<WayFault> fault_of_points(std::span<const WayPoint> way) {
    if (way.size() < 2) {
        return WayFault{WayError::too_few, way.size()};
    }
    for (const std::size_t end : {std::size_t{0}, way.size() - 1}) {
        if (way[end].sheave) {
            return WayFault{WayError::sheave_at_end, end};
        }
    }
    for (std::size_t i = 1; i < way.size(); ++i) {
        if (distance_between(way[i - 1].at, way[i].at) < as_good_as_nothing) {
            return WayFault{WayError::same_place, i};
        }
    }
    return std::nullopt;
}

struct Bend {
    Length tangent; ///< of either leg, from the corner to where the arc begins
    Length arc;
};

Bend bend_round(Length sheave, Length diameter, Angle turned) {
    const Length radius = (sheave + diameter) / 2.0;
    return {radius * std::tan(turned.si() / 2.0), radius * turned.si()};
}

} // namespace

OrWayFault<WayLength> route_length(std::span<const WayPoint> way, Length diameter) {
    Expects(diameter.si() >= 0.0);
    if (const auto fault = fault_of_points(way)) {
        return *fault;
    }
    WayLength length;
    Bend before;
    for (std::size_t i = 1; i < way.size(); ++i) {
        Bend bend;
        if (way[i].sheave) {
            Expects(way[i].sheave->si() >= 0.0);
            const Angle turned = deflection(way[i - 1].at, way[i].at, way[i + 1].at).angle;
            if (turned.si() > right_back) {
                return WayFault{WayError::turns_right_back, i};
            }
            bend = bend_round(*way[i].sheave, diameter, turned);
            ++length.turns;
        }
        const Length leg = distance_between(way[i - 1].at, way[i].at);
        const Length bends = before.tangent + bend.tangent;
        if (bends > leg + as_good_as_nothing) {
            return WayFault{WayError::bends_overlap, i, bends, leg};
        }
        length.straight += leg - bends;
        length.wrapped += bend.arc;
        before = bend;
    }
    return length;
}

} // namespace libsplice
