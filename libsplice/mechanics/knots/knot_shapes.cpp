// Each knot as a few points that a loose rope runs through.
#include "libsplice/mechanics/knots/knot_shapes.h"

#include <array>
#include <cmath>
#include <numbers>

namespace libsplice {

std::vector<Point> wound_through_loop(int turns) {
    constexpr double pi = std::numbers::pi;
    const int windings = 2 * turns + 1;
    const double ring = 1.5 + 0.5 * windings; // rings that are wound more need more room
    constexpr double tube = 1.2;
    const int count = 24 * windings;
    std::vector<Point> points;
    for (int i = 0; i <= count; ++i) {
        const double round = 4.0 * pi * i / count;
        const double wound = 2.0 * pi * windings * i / count;
        const double wide = ring + tube * std::cos(wound);
        points.push_back({wide * std::cos(round), wide * std::sin(round), tube * std::sin(wound)});
    }
    // Cut open on the outside, with both ends led straight out from the ring.
    constexpr int cut = 3;
    points.erase(points.begin(), points.begin() + cut);
    points.erase(points.end() - cut, points.end());
    const auto outwards = [](Point at) {
        return Point{1.3 * at.x, 1.3 * at.y, at.z};
    };
    points.insert(points.begin(), outwards(points.front()));
    points.push_back(outwards(points.back()));
    return points;
}

std::vector<Point> twisted_bight(int half_twists) {
    constexpr double pi = std::numbers::pi;
    constexpr double from_axis = 1.2;
    constexpr double pitch = 3.6; // along the axis for each half twist
    constexpr int steps = 12;
    const int count = steps * half_twists;
    const double top = pitch * half_twists;
    std::vector<Point> up;
    std::vector<Point> down;
    for (int i = 0; i <= count; ++i) {
        const double turned = pi * i / steps;
        const double height = top * i / count;
        up.push_back({from_axis * std::cos(turned), from_axis * std::sin(turned), height});
        down.insert(down.begin(),
                    {-from_axis * std::cos(turned), -from_axis * std::sin(turned), height});
    }
    constexpr double wide = 2.5;
    const double side = half_twists % 2 == 0 ? 1.0 : -1.0; // of the bight's leg that leads up
    std::vector<Point> points{{10.0, 0.0, 0.0}};
    points.insert(points.end(), up.begin(), up.end());
    for (const Point point :
         {Point{wide * side, 0.0, top + 1.5}, Point{wide * side, 0.0, top + 4.5},
          Point{0.0, 0.0, top + 6.5}, Point{-wide * side, 0.0, top + 4.5},
          Point{-wide * side, 0.0, top + 1.5}}) {
        points.push_back(point);
    }
    points.insert(points.end(), down.begin(), down.end());
    // The end goes up outside and through the eye, from the side that makes the crossings
    // alternate.
    for (const Point point : {Point{-6.0, 2.0, 0.0}, Point{-6.0, 3.0, top + 3.0},
                              Point{0.0, 3.0, top + 3.0}, Point{0.0, -10.0, top + 3.0}}) {
        points.push_back(point);
    }
    return points;
}

std::vector<Point> laid_open(const Curve& ring, std::size_t at) {
    constexpr std::size_t left_out = 4; // segments on either side, which would lie very far away
    const std::size_t count = ring.points.size();
    const Point centre = ring.points[at];
    std::vector<Point> line;
    for (std::size_t i = left_out; i + left_out <= count; ++i) {
        const Point step = ring.points[(at + i) % count] - centre;
        line.push_back((1.0 / dot(step, step)) * step);
    }
    return line;
}

namespace {

/// Stevedore knots draw up in several ways; opened in the strand that leads down from its bight,
/// one comes to the tightest.
std::vector<Point> stevedore() {
    constexpr int half_twists = 4;
    Curve ring{twisted_bight(half_twists), true};
    // Round the outside, from the end back to the standing part.
    ring.points.push_back({10.0, -12.0, 14.4});
    ring.points.push_back({12.0, -8.0, 0.0});
    ring = respaced(ring, 0.25);
    return laid_open(ring, ring.points.size() * 2 / 3);
}

constexpr std::array shapes{
    KnotShape{"overhand",
              [] {
                  return wound_through_loop(1);
              }},
    KnotShape{"figure-eight",
              [] {
                  return twisted_bight(2);
              }},
    KnotShape{"double-overhand",
              [] {
                  return wound_through_loop(2);
              }},
    KnotShape{"stevedore", stevedore},
    KnotShape{"triple-overhand",
              [] {
                  return wound_through_loop(3);
              }},
};

} // namespace

std::span<const KnotShape> knot_shapes() {
    return shapes;
}

} // namespace libsplice
