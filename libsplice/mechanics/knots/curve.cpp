// Lengths, turnings and distances of a chain of points.
#include "libsplice/mechanics/knots/curve.h"

#include <gsl/assert>

#include <algorithm>
#include <cmath>

namespace libsplice {

double norm(Point a) {
    return std::sqrt(dot(a, a));
}

Point direction_of(Point a) {
    const double length = norm(a);
    Expects(length > 0.0);
    return (1.0 / length) * a;
}

double length_of(const Curve& curve) {
    double length = 0.0;
    for (std::size_t i = 0; i < curve.segments(); ++i) {
        length += norm(curve.end_of(i) - curve.begin_of(i));
    }
    return length;
}

double taken_up(const Curve& curve) {
    Expects(!curve.closed);
    return std::max(0.0, length_of(curve) - norm(curve.points.back() - curve.points.front()));
}

Curve respaced(const Curve& curve, double mesh) {
    Expects(curve.points.size() >= 2 && mesh > 0.0);
    const double length = length_of(curve);
    const auto count = std::max<std::size_t>(curve.closed ? 3 : 1,
                                             static_cast<std::size_t>(std::llround(length / mesh)));
    Curve even{{}, curve.closed};
    even.points.reserve(count + 1);
    std::size_t segment = 0;
    double before = 0.0; // length up to the segment's beginning
    double here = norm(curve.end_of(0) - curve.begin_of(0));
    for (std::size_t i = 0; i < count; ++i) {
        const double along = length * static_cast<double>(i) / static_cast<double>(count);
        while (before + here < along && segment + 1 < curve.segments()) {
            before += here;
            ++segment;
            here = norm(curve.end_of(segment) - curve.begin_of(segment));
        }
        const double share = here > 0.0 ? std::min(1.0, (along - before) / here) : 0.0;
        even.points.push_back(curve.begin_of(segment) +
                              share * (curve.end_of(segment) - curve.begin_of(segment)));
    }
    if (!curve.closed) {
        even.points.push_back(curve.points.back());
    }
    return even;
}

namespace {

double share(double part, double whole) {
    return whole > 0.0 ? std::clamp(part / whole, 0.0, 1.0) : 0.0;
}

} // namespace

Approach approach(Point first_begin, Point first_end, Point second_begin, Point second_end) {
    const Point first = first_end - first_begin;
    const Point second = second_end - second_begin;
    const Point apart = first_begin - second_begin;
    const double a = dot(first, first);
    const double e = dot(second, second);
    const double b = dot(first, second);
    const double c = dot(first, apart);
    const double f = dot(second, apart);
    Approach closest;
    // Parallel segments have many closest points: the first's beginning is one to start from.
    closest.on_first = share(b * f - c * e, a * e - b * b);
    closest.on_second = share(b * closest.on_first + f, e);
    closest.on_first = share(b * closest.on_second - c, a);
    closest.step = apart + closest.on_first * first - closest.on_second * second;
    closest.distance = norm(closest.step);
    return closest;
}

} // namespace libsplice
