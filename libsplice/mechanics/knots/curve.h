// A rope's centreline as a chain of points, in rope diameters.
#pragma once

#include <cstddef>
#include <vector>

namespace libsplice {

/// A point or a step between two, in rope diameters.
struct Point {
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;

    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
    friend constexpr Point operator*(double factor, Point a) {
        return {factor * a.x, factor * a.y, factor * a.z};
    }
    friend constexpr bool operator==(const Point&, const Point&) = default;
};

[[nodiscard]] constexpr double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
[[nodiscard]] constexpr Point cross(Point a, Point b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
[[nodiscard]] double norm(Point a);
/// `a` at length 1; it is not 0.
[[nodiscard]] Point direction_of(Point a);

/// A chain of straight segments through two points or more; a closed one (three or more) goes on
/// from its last point to its first.
struct Curve {
    std::vector<Point> points = {};
    bool closed = false;

    [[nodiscard]] std::size_t segments() const { return points.size() - (closed ? 0 : 1); }
    [[nodiscard]] Point begin_of(std::size_t segment) const { return points[segment]; }
    [[nodiscard]] Point end_of(std::size_t segment) const {
        return points[segment + 1 == points.size() ? 0 : segment + 1];
    }
};

/// Along the segments.
[[nodiscard]] double length_of(const Curve& curve);

/// What an open curve takes up: its length less the straight distance of its ends; never negative.
[[nodiscard]] double taken_up(const Curve& curve);

/// The same line through points about `mesh` apart, evenly along it; the ends of an open one stay.
[[nodiscard]] Curve respaced(const Curve& curve, double mesh);

/// Where two segments come closest.
struct Approach {
    double on_first = 0.0;  ///< 0 at the first segment's beginning, 1 at its end
    double on_second = 0.0; ///< likewise
    Point step;             ///< from the second's closest point to the first's
    double distance = 0.0;
};
[[nodiscard]] Approach approach(Point first_begin, Point first_end, Point second_begin,
                                Point second_end);

} // namespace libsplice
