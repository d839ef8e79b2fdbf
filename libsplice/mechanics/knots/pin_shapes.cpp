// Each loop and hitch as points round a pin.
#include "libsplice/mechanics/knots/pin_shapes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace libsplice {

namespace {

constexpr double half_turn = std::numbers::pi;

/// A closed figure-eight in a flat drawing: x and y in it, z above it, for a whole turn of the
/// angle.
Point flat_figure_eight(double angle) {
    const double wide = 2.0 + std::cos(2.0 * angle);
    return {wide * std::cos(3.0 * angle), wide * std::sin(3.0 * angle), std::sin(4.0 * angle)};
}

/// Half round, from straight above `centre` or straight below it, with the hollow towards +x, or
/// towards -x where `radius` is below 0.
void add_half_round(std::vector<Point>& line, Point centre, double radius) {
    constexpr int steps = 6;
    const double from = radius > 0.0 ? half_turn / 2.0 : -half_turn / 2.0;
    const double size = std::abs(radius);
    for (int i = 0; i <= steps; ++i) {
        const double at = from + half_turn * i / steps;
        line.push_back({centre.x + size * std::cos(at), centre.y + size * std::sin(at), centre.z});
    }
}

/// The flat figure-eight cut open on its outside, where its angle is 0, with one end led to +x and
/// the other to -x along the x axis; room in it for a second rope beside the first.
std::vector<Point> flat_line(Drawing drawing) {
    constexpr double room = 3.2;
    constexpr double height = 1.8;
    constexpr double left_out = 0.03; // of the whole turn, on either side of the cut
    constexpr double outside = 3.0;   // beyond the cut, where the ends lead away
    constexpr int count = 240;
    const Point cut = flat_figure_eight(0.0);
    const Point out = direction_of({cut.x, cut.y, 0.0});
    constexpr double small = 1e-4;
    const Point ahead = flat_figure_eight(small) - flat_figure_eight(-small);
    const double side = out.x * ahead.y - out.y * ahead.x > 0.0 ? 1.0 : -1.0;
    const Point along = side * Point{-out.y, out.x, 0.0};
    const double size = room * drawing.wider;
    std::vector<Point> drawn;
    for (int i = 0; i <= count; ++i) {
        const double part = left_out + (1.0 - 2.0 * left_out) * i / count;
        const Point at = flat_figure_eight(2.0 * half_turn * part);
        drawn.push_back({size * drawing.longer * dot(at, along), size * dot(at, out),
                         height * drawing.higher * at.z});
    }
    const Point first = drawn.front();
    const Point last = drawn.back();
    const double lead = 3.0 * size * drawing.longer + 8.0;
    const Point beside{0.0, outside / 2.0, 0.0};
    std::vector<Point> line{{lead, first.y + outside, first.z}};
    add_half_round(line, first + beside, outside / 2.0);
    line.insert(line.end(), drawn.begin() + 1, drawn.end() - 1);
    add_half_round(line, last + beside, -outside / 2.0);
    line.push_back({-lead, last.y + outside, last.z});
    for (Point& point : line) {
        point.y -= first.y + outside;
    }
    return line;
}

/// The same line `aside` to its left in the drawing.
std::vector<Point> beside(const std::vector<Point>& line, double aside) {
    std::vector<Point> other;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const Point step = line[std::min(i + 1, line.size() - 1)] - line[i == 0 ? 0 : i - 1];
        const Point along = direction_of({step.x, step.y, 0.0});
        other.push_back(line[i] + aside * Point{-along.y, along.x, 0.0});
    }
    return other;
}

/// A line wound about the z axis, drawn a stretch at a time. Angles are in degrees from +x.
class Winding {
  public:
    void to(Point point) { line_.push_back(point); }
    struct Place {
        double angle;
        double along; ///< the spar
        double radius;
    };
    void round(Place from, Place until) {
        const int steps = std::max(4, static_cast<int>(std::abs(until.angle - from.angle) / 15.0));
        for (int i = 0; i <= steps; ++i) {
            const auto between = [&](double a, double b) {
                return a + (b - a) * i / steps;
            };
            const double angle = between(from.angle, until.angle) * half_turn / 180.0;
            const double radius = between(from.radius, until.radius);
            line_.push_back({radius * std::cos(angle), radius * std::sin(angle),
                             between(from.along, until.along)});
        }
    }
    [[nodiscard]] const std::vector<Point>& line() const { return line_; }

  private:
    std::vector<Point> line_;
};

/// How far from the spar's centre a hitch's ends are held.
double far_end(double spar, double roomy) {
    return 2.0 * spar + 14.0 * roomy;
}

} // namespace

/// A line and its fellow beside it, joined round the pin by a loop; the ends lie as far apart as
/// the loop's legs on the pin.
std::vector<Point> doubled_figure_eight(double pin, Drawing drawing) {
    constexpr double apart = 0.75; // from the middle of the two
    constexpr double tail = 4.0;
    const double radius = centreline_radius(pin);
    const double roomy = 1.2 * radius;
    const auto middle = respaced({flat_line(drawing), false}, 0.4).points;
    std::vector<Point> line = beside(middle, apart);
    std::vector<Point> back = beside(middle, -apart);
    const Point down{3.0 + roomy - middle.back().x, 0.0, 0.0};
    for (std::vector<Point>* both : {&line, &back}) {
        std::ranges::transform(*both, both->begin(), [&](Point at) { return at + down; });
    }
    const double side = line.back().y > back.back().y ? 1.0 : -1.0;
    constexpr int steps = 10;
    for (int i = 0; i <= steps; ++i) {
        const double at = half_turn / 2.0 + half_turn * i / steps;
        line.push_back({roomy * std::cos(at), side * roomy * std::sin(at), 0.0});
    }
    line.insert(line.end(), back.rbegin(), back.rend());
    const double top = line.front().x + tail;
    const double end = line.front().y > line.back().y ? radius : -radius;
    line.front() = {top, end, 0.0};
    line.back() = {top, -end, 0.0};
    return line;
}

std::vector<Point> clove_hitch_drawn(double spar, double roomy) {
    const double end = far_end(spar, roomy);
    const double radius = centreline_radius(spar);
    const double on = 1.15 * roomy * radius;
    const double over = on + 2.0 * roomy;
    const double side = 1.6 * roomy;
    Winding hitch;
    hitch.to({end, radius, 0.5});
    hitch.to({1.5 * on, on, 0.5 * side});
    hitch.round({90, 0.5 * side, on}, {330, 1.5 * side, on});
    hitch.round({345, 1.5 * side, on + 1.3}, {450, 0.0, over});
    hitch.round({465, -0.3 * side, over}, {480, -1.2 * side, on + 1.2});
    hitch.round({500, -1.5 * side, on}, {765, -0.8 * side, on});
    hitch.to({0.5, on, -0.5 * side});
    hitch.to({-1.5 * on, on, -0.4 * side});
    hitch.to({-end, radius, -0.5});
    return hitch.line();
}

std::vector<Point> cow_hitch_drawn(double spar, double roomy) {
    const double radius = centreline_radius(spar);
    const double on = 1.15 * roomy * radius;
    const double side = 1.3 * roomy;
    Winding half;
    half.to({far_end(spar, roomy), radius, 0.5});
    half.to({1.5 * on, on, 0.7 * side});
    half.round({90, 0.7 * side, on}, {300, 2.0 * side, on});
    half.to({on + 1.0, -0.3 * on, 2.2 * side});
    half.to({on + 1.5, on, 2.0 * side});
    half.to({on + 1.0, on + 2.0, side});
    std::vector<Point> line = half.line();
    line.push_back({on + 1.0, on + 2.2, 0.0});
    std::for_each(half.line().rbegin(), half.line().rend(), [&](Point at) {
        line.push_back({at.x, at.y, -at.z});
    });
    return line;
}

namespace {

constexpr std::array pin_knots{
    PinShape{"figure-eight-loop", PinHold::loop, 0.0, 1.0,
             [](double pin) {
                 return doubled_figure_eight(pin, {});
             }},
    PinShape{"clove-hitch", PinHold::hitch, 2.0, 4.0,
             [](double pin) {
                 return clove_hitch_drawn(pin, 1.4);
             }},
    PinShape{"cow-hitch", PinHold::hitch, 2.0, 4.0,
             [](double pin) {
                 return cow_hitch_drawn(pin, 1.4);
             }},
};

} // namespace

std::span<const PinShape> pin_shapes() {
    return pin_knots;
}

} // namespace libsplice
