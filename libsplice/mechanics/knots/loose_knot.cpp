// A line of points made into a rope that can be pulled: led away at its ends, and of a fit size.
#include "libsplice/mechanics/knots/loose_knot.h"

#include "libsplice/mechanics/knots/near_strands.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

namespace libsplice {

namespace {

/// Strands at least this far apart, in diameters.
constexpr double room_between = 2.0;
/// Longer ropes, in diameters, would be pulled for hours.
constexpr double longest = 6000.0;
/// A line that is longer than this, in diameters, is made smaller if its strands lie far apart.
constexpr double long_enough = 300.0;
/// What a line without strands that come near one another is brought to: it ties no knot.
constexpr double length_without_knot = 10.0;
constexpr double shortest_curve = 1e-3;

struct Ball {
    Point centre;
    double radius = 0.0;
};

Ball ball_about(const std::vector<Point>& points) {
    Point low = points.front();
    Point high = low;
    for (const Point& point : points) {
        low = {std::min(low.x, point.x), std::min(low.y, point.y), std::min(low.z, point.z)};
        high = {std::max(high.x, point.x), std::max(high.y, point.y), std::max(high.z, point.z)};
    }
    Ball ball{0.5 * (low + high), 0.0};
    for (const Point& point : points) {
        ball.radius = std::max(ball.radius, norm(point - ball.centre));
    }
    return ball;
}

/// Where the ray from a point inside the ball leaves it.
Point way_out(const Ball& ball, Point from, Point direction) {
    const Point apart = from - ball.centre;
    const double across = dot(apart, direction);
    const double square = across * across + ball.radius * ball.radius - dot(apart, apart);
    return from + (std::sqrt(std::max(0.0, square)) - across) * direction;
}

/// Away from the other end, and no nearer to the ball's centre.
Point parting(Point start, Point end) {
    const Point apart = start - end;
    if (norm(apart) > 1e-3 * norm(start)) {
        return direction_of(apart);
    }
    const Point aside =
        std::abs(start.x) < 0.7 * norm(start) ? Point{1.0, 0.0, 0.0} : Point{0.0, 1.0, 0.0};
    return direction_of(cross(start, aside));
}

/// Outside the ball nothing is in the way, so that the tails, which part there, tie no knot.
void lead_ends_away(std::vector<Point>& line) {
    Ball ball = ball_about(line);
    ball.radius *= 1.1;
    const std::size_t last = line.size() - 1;
    const Point start = way_out(ball, line.front(), direction_of(line[0] - line[1]));
    const Point end = way_out(ball, line.back(), direction_of(line[last] - line[last - 1]));
    const Point away = (0.3 * ball.radius) * parting(start - ball.centre, end - ball.centre);
    line.insert(line.begin(), {start + away, start});
    line.insert(line.end(), {end, end - away});
}

/// How far the direction has turned up to each segment, all turns taken as positive.
std::vector<double> turns_up_to(const Curve& curve) {
    std::vector<double> turns{0.0};
    for (std::size_t i = 1; i < curve.segments(); ++i) {
        const Point a = curve.end_of(i - 1) - curve.begin_of(i - 1);
        const Point b = curve.end_of(i) - curve.begin_of(i);
        turns.push_back(turns.back() + std::atan2(norm(cross(a, b)), dot(a, b)));
    }
    return turns;
}

/// How close two strands come: stretches between which the rope turns right back, and goes a way
/// round. Without those two, a corner would be two strands that meet.
class Strands {
  public:
    explicit Strands(const Curve& curve) : curve_(curve), turns_(turns_up_to(curve)) {
        for (std::size_t i = 0; i < curve.segments(); ++i) {
            along_.push_back(along_.back() + norm(curve.end_of(i) - curve.begin_of(i)));
        }
    }

    [[nodiscard]] std::optional<double> closest_within(double reach) const {
        std::optional<double> closest;
        for (const auto& [i, j] : near_pairs(curve_, reach, 2)) {
            const auto gap = approach(curve_.begin_of(i), curve_.end_of(i), curve_.begin_of(j),
                                      curve_.end_of(j));
            if (is_two_strands(i, j, gap) && gap.distance <= closest.value_or(reach)) {
                closest = gap.distance;
            }
        }
        return closest;
    }

  private:
    [[nodiscard]] bool is_two_strands(std::size_t i, std::size_t j, const Approach& gap) const {
        constexpr double right_back = 0.95 * std::numbers::pi;
        const double here = along_[i] + gap.on_first * (along_[i + 1] - along_[i]);
        const double there = along_[j] + gap.on_second * (along_[j + 1] - along_[j]);
        double way = there - here;
        if (curve_.closed) {
            way = std::min(way, along_.back() - way);
        }
        return turns_[j] - turns_[i] >= right_back && way >= std::numbers::pi / 2 * gap.distance;
    }

    const Curve& curve_;
    std::vector<double> turns_;
    std::vector<double> along_{0.0};
};

/// By how much a rope of this length is made larger or smaller, `gap` being how close its strands
/// come.
double scale_of(double length, std::optional<double> gap) {
    if (!gap) {
        return length < length_without_knot || length > long_enough ? length_without_knot / length
                                                                    : 1.0;
    }
    const double roomy_scale = room_between / *gap;
    return length > long_enough ? std::max(roomy_scale, long_enough / length)
                                : std::max(1.0, roomy_scale);
}

std::variant<Curve, LooseError> with_room(Curve curve) {
    const double length = length_of(curve);
    const double size = ball_about(curve.points).radius;
    const Strands strands(curve);
    std::optional<double> gap;
    for (double reach = size / 64.0; !gap && reach < 2.0 * size; reach *= 2.0) {
        gap = strands.closest_within(reach);
    }
    if (gap && *gap <= 1e-7 * length) {
        return LooseError::strands_meet;
    }
    const double scale = scale_of(length, gap);
    if (length * scale > longest) {
        return LooseError::too_tangled;
    }
    for (Point& point : curve.points) {
        point = scale * point;
    }
    return curve;
}

std::vector<Point> without_repeats(std::vector<Point> line, bool closed) {
    line.erase(std::unique(line.begin(), line.end()), line.end());
    if (closed && line.size() > 1 && line.front() == line.back()) {
        line.pop_back();
    }
    return line;
}

/// A curve of these points, or why there is none to pull.
std::variant<Curve, LooseError> readable(std::vector<Point> line, bool closed) {
    Curve curve{without_repeats(std::move(line), closed), closed};
    if (curve.points.size() < (closed ? 3U : 2U)) {
        return LooseError::too_few;
    }
    if (curve.points.size() > most_points) {
        return LooseError::too_many;
    }
    if (!(length_of(curve) >= shortest_curve)) {
        return LooseError::too_short;
    }
    return curve;
}

} // namespace

std::variant<Curve, LooseError> loose_rope(std::vector<Point> line) {
    auto curve = readable(std::move(line), false);
    if (std::holds_alternative<LooseError>(curve)) {
        return curve;
    }
    lead_ends_away(std::get<Curve>(curve).points);
    return with_room(std::get<Curve>(std::move(curve)));
}

std::variant<Curve, LooseError> loose_ring(std::vector<Point> line) {
    auto curve = readable(std::move(line), true);
    return std::holds_alternative<LooseError>(curve) ? curve
                                                     : with_room(std::get<Curve>(std::move(curve)));
}

} // namespace libsplice
