// Measures a route along the centreline of its rope.
#include "libsplice/cut/bind/route.h"

#include "libsplice/cut/bind/way_fault.h"
#include "libsplice/job/route/read_route.h"
#include "libsplice/job/route/route_values.h"
#include "libsplice/mechanics/routes/lacing.h"
#include "libsplice/mechanics/routes/purchase.h"
#include "libsplice/mechanics/routes/route.h"

#include <algorithm>

namespace libsplice {

namespace {

using Pattern = LacingRoute::Pattern;

RouteLength from_way(const WayLength& way) {
    RouteLength route;
    route.straight = way.straight;
    route.wrapped = way.wrapped;
    route.turns = way.turns;
    route.rove = true;
    return route;
}

OrWayFault<RouteLength> measured(const PointRoute& route, Length diameter) {
    std::vector<WayPoint> way;
    std::optional<Length> least;
    for (const RoutePoint& point : route.points) {
        way.push_back({point.at, point.sheave});
        if (point.sheave) {
            least = std::min(least.value_or(*point.sheave), *point.sheave);
        }
    }
    const auto length = route_length(way, diameter);
    if (const auto* fault = std::get_if<WayFault>(&length)) {
        return *fault;
    }
    RouteLength found = from_way(std::get<WayLength>(length));
    found.least_sheave = least;
    return found;
}

std::vector<Position> eyelets_of(const EyeletRow& row) {
    std::vector<Position> corners;
    for (const RoutePoint& point : row.points) {
        corners.push_back(point.at);
    }
    return row.count ? spaced_evenly(corners, *row.count) : corners;
}

OrWayFault<WayLength> zigzag(const LacingRoute& lacing, std::span<const std::vector<Position>> rows,
                             Length diameter) {
    return rows.empty()
               ? zigzag_lacing(lacing.count, lacing.gap, lacing.pitch, lacing.around, diameter)
               : zigzag_lacing(rows[0], rows[1], lacing.around, diameter);
}

OrWayFault<Length> rail(const LacingRoute& lacing, std::span<const std::vector<Position>> rows,
                        Length diameter) {
    return rows.empty()
               ? rail_lacing(lacing.count, lacing.gap, lacing.around, lacing.pitch, diameter)
               : rail_lacing(rows[0], lacing.gap, lacing.around, diameter);
}

/// Lacings that count as thread through points, from their length alone.
OrWayFault<Length> threaded(const LacingRoute& lacing, std::span<const std::vector<Position>> rows,
                            Length diameter) {
    switch (lacing.pattern) {
    case Pattern::rail:
        return rail(lacing, rows, diameter);
    case Pattern::criss_cross:
        return rows.empty() ? criss_cross_lacing(lacing.count, lacing.gap, lacing.pitch)
                            : criss_cross_lacing(rows[0], rows[1]);
    case Pattern::straight:
        return rows.empty() ? straight_lacing(lacing.count, lacing.gap, lacing.pitch)
                            : straight_lacing(rows[0], rows[1]);
    case Pattern::spiral:
    case Pattern::zigzag:
        break;
    }
    return spiral_lacing(lacing.turns, lacing.around, lacing.pitch, diameter);
}

OrWayFault<RouteLength> measured(const LacingRoute& lacing, Length diameter) {
    std::vector<std::vector<Position>> rows;
    for (const EyeletRow& row : lacing.rows) {
        rows.push_back(eyelets_of(row));
    }
    if (lacing.pattern == Pattern::zigzag) {
        const auto way = zigzag(lacing, rows, diameter);
        const auto* fault = std::get_if<WayFault>(&way);
        return fault != nullptr ? OrWayFault<RouteLength>(*fault)
                                : from_way(std::get<WayLength>(way));
    }
    const auto length = threaded(lacing, rows, diameter);
    if (const auto* fault = std::get_if<WayFault>(&length)) {
        return *fault;
    }
    RouteLength route;
    route.straight = std::get<Length>(length);
    route.rove = true;
    return route;
}

Purchase rigged(const PurchaseRoute& route) {
    Purchase purchase =
        plain_purchase(route.parts, route.run, route.sheave.value_or(Length()), route.tail);
    purchase.hauled = route.hauled;
    purchase.becket = route.becket;
    purchase.lead = route.lead;
    if (!route.sheave) {
        purchase.sheaves.clear();
        for (const PurchaseSheave& sheave : route.sheaves) {
            purchase.sheaves.push_back({sheave.size, sheave.turn});
        }
    }
    return purchase;
}

OrWayFault<RouteLength> measured(const PurchaseRoute& route, Length diameter) {
    const Purchase purchase = rigged(route);
    const auto length = purchase_length(purchase, diameter);
    if (const auto* fault = std::get_if<WayFault>(&length)) {
        return *fault;
    }
    const auto& found = std::get<PurchaseLength>(length);
    RouteLength measured = from_way(found.way);
    measured.unloaded = to_nanometres(route.tail);
    measured.tail_eased = found.tail_eased;
    if (route.hauled) {
        measured.tail_hauled = found.tail_hauled;
    }
    if (!purchase.sheaves.empty()) {
        measured.least_sheave =
            std::ranges::min_element(purchase.sheaves, {}, &RigSheave::diameter)->diameter;
    }
    measured.eased = true;
    return measured;
}

/// The point that the fault is about where the route has it, else the route.
Place place_of(const Route& route, const WayFault& fault) {
    const auto* points = std::get_if<PointRoute>(&route.way);
    return points != nullptr && fault.at < points->points.size() ? points->points[fault.at].place
                                                                 : route.at;
}

} // namespace

std::optional<RouteLength> bind_route(const Rope* rope, CellReader& cells) {
    const JobLine& job = cells.job();
    if (rope == nullptr || !has_route(job) || !job.text(Column::length).empty()) {
        return std::nullopt;
    }
    for (const Fault& fault : job.route->faults) {
        cells.add_placed(fault);
    }
    const auto& route = job.route->route;
    if (!route) {
        return std::nullopt;
    }
    auto length = std::visit(
        [&](const auto& way) { return measured(way, rope->counting_diameter()); }, route->way);
    if (const auto* fault = std::get_if<WayFault>(&length)) {
        cells.add_placed(
            {Code::route_impassable, way_fault_text(*fault), place_of(*route, *fault), "route"});
        return std::nullopt;
    }
    const auto& found = std::get<RouteLength>(length);
    if (found.straight + found.wrapped > farthest) {
        cells.add_placed({Code::value_out_of_range,
                          "the route is over 100 km long; look for a wrong unit", route->at,
                          "route"});
        return std::nullopt;
    }
    return found;
}

} // namespace libsplice
