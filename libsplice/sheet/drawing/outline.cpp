// The outline of a rope laid out straight: the union of its parts.
#include "libsplice/sheet/drawing/outline.h"

#include "libsplice/units/show.h"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <cmath>

namespace libsplice {

namespace {

namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Point>;
using Shape = bg::model::multi_polygon<Polygon>;

Polygon box(double from, double to, double half_at_from, double half_at_to) {
    Polygon polygon;
    bg::append(polygon.outer(), Point(from, -half_at_from));
    bg::append(polygon.outer(), Point(to, -half_at_to));
    bg::append(polygon.outer(), Point(to, half_at_to));
    bg::append(polygon.outer(), Point(from, half_at_from));
    bg::correct(polygon);
    return polygon;
}

/// Round lumps along the knot, as a rope that passes over itself.
Shape lumps(double from, double to, double half_width, int wanted) {
    constexpr int points_of_circle = 16;
    bg::model::multi_point<Point> centres;
    const double length = std::abs(to - from);
    const int round = static_cast<int>(std::lround(length / (1.6 * half_width)));
    const int count = std::max(1, wanted > 0 ? wanted : round);
    for (int i = 0; i < count; ++i) {
        const double share = (i + 0.5) / count;
        const double side = i % 2 == 0 ? 0.35 : -0.35;
        bg::append(centres,
                   Point(from + share * (to - from), count == 1 ? 0.0 : side * half_width));
    }
    Shape shape;
    bg::buffer(centres, shape, bg::strategy::buffer::distance_symmetric<double>(1.25 * half_width),
               bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_round(),
               bg::strategy::buffer::end_round(),
               bg::strategy::buffer::point_circle(points_of_circle));
    return shape;
}

Shape shape_of(const OutlinePart& part) {
    switch (part.form) {
    case OutlinePart::Form::pointed:
        return {box(part.from, part.to, 0.25 * part.half_width, part.half_width)};
    case OutlinePart::Form::bulging: {
        Shape both;
        bg::union_(Shape{box(part.from, part.to, part.half_width, part.half_width)},
                   lumps(part.from, part.to, part.half_width, part.lumps), both);
        return both;
    }
    case OutlinePart::Form::even:
        break;
    }
    return {box(part.from, part.to, part.half_width, part.half_width)};
}

} // namespace

std::string outline_path(std::span<const OutlinePart> parts, double y) {
    Shape whole;
    for (const OutlinePart& part : parts) {
        if (std::abs(part.to - part.from) < 0.01) {
            continue;
        }
        if (whole.empty()) {
            whole = shape_of(part);
            continue;
        }
        Shape joined;
        bg::union_(whole, shape_of(part), joined);
        whole = std::move(joined);
    }
    std::string path;
    for (const Polygon& polygon : whole) {
        char command = 'M';
        for (const Point& point : polygon.outer()) {
            path += command + show_number(point.x(), 1) + ' ' + show_number(y + point.y(), 1);
            command = 'L';
        }
        path += 'Z';
    }
    return path;
}

} // namespace libsplice
