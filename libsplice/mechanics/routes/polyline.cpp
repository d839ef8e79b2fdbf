// Boost 1.74 includes a header that it calls deprecated itself.
#define BOOST_ALLOW_DEPRECATED_HEADERS

#include "libsplice/mechanics/routes/polyline.h"

#include <boost/geometry/algorithms/distance.hpp>
#include <boost/geometry/algorithms/length.hpp>
#include <boost/geometry/algorithms/line_interpolate.hpp>
#include <boost/geometry/arithmetic/arithmetic.hpp>
#include <boost/geometry/arithmetic/cross_product.hpp>
#include <boost/geometry/arithmetic/dot_product.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point.hpp>
#include <boost/geometry/strategies/cartesian/line_interpolate.hpp>
#include <boost/geometry/strategies/strategies.hpp>
#include <gsl/assert>

#include <cmath>

namespace libsplice {

namespace {

namespace bg = boost::geometry;
using Point = bg::model::point<double, 3, bg::cs::cartesian>;
using Polyline = bg::model::linestring<Point>;

Point point(const Position& position) {
    return {position[0].si(), position[1].si(), position[2].si()};
}

Position position(const Point& point) {
    return {Length(point.get<0>()), Length(point.get<1>()), Length(point.get<2>())};
}

Polyline line_through(std::span<const Position> positions) {
    Polyline line;
    line.reserve(positions.size());
    for (const Position& each : positions) {
        line.push_back(point(each));
    }
    return line;
}

/// Boost measures in long double.
double length(const Polyline& line) {
    return static_cast<double>(bg::length(line));
}

Point direction(const Position& from, const Position& to) {
    Point step = point(to);
    bg::subtract_point(step, point(from));
    bg::divide_value(step, distance_between(from, to).si());
    return step;
}

} // namespace

Length distance_between(const Position& from, const Position& to) {
    return Length(bg::distance(point(from), point(to)));
}

Length polyline_length(std::span<const Position> positions) {
    return Length(length(line_through(positions)));
}

std::vector<Position> spaced_evenly(std::span<const Position> polyline, std::size_t count) {
    Expects(polyline.size() >= 2 && count >= 2);
    const Polyline line = line_through(polyline);
    const double spacing = length(line) / static_cast<double>(count - 1);
    std::vector<Position> spaced;
    spaced.reserve(count);
    spaced.push_back(polyline.front());
    std::size_t leg = 0; // from line[leg] to the next, which begins at `before`
    double before = 0.0;
    double here = bg::distance(line[0], line[1]);
    for (std::size_t i = 1; i + 1 < count; ++i) {
        const double along = spacing * static_cast<double>(i);
        while (before + here < along && leg + 2 < line.size()) {
            before += here;
            ++leg;
            here = bg::distance(line[leg], line[leg + 1]);
        }
        Point at;
        bg::line_interpolate(Polyline{line[leg], line[leg + 1]}, along - before, at);
        spaced.push_back(position(at));
    }
    spaced.push_back(polyline.back());
    return spaced;
}

Deflection deflection(const Position& before, const Position& at, const Position& after) {
    Expects(distance_between(before, at).si() > 0.0 && distance_between(at, after).si() > 0.0);
    const Point coming = direction(before, at);
    const Point going = direction(at, after);
    const Point axis = bg::cross_product(coming, going);
    const double sine = std::sqrt(bg::dot_product(axis, axis));
    return {Angle(std::atan2(sine, bg::dot_product(coming, going))),
            {axis.get<0>(), axis.get<1>(), axis.get<2>()}};
}

} // namespace libsplice
