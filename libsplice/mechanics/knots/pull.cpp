// Draws the rope in by small steps; parts too close are pushed apart, and sharp bends opened.
#include "libsplice/mechanics/knots/pull.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace libsplice {

namespace {

constexpr double longest_step = 0.04;
constexpr int sweeps = 4;
/// Pairs are listed this much farther than they touch, so that a list holds for several steps.
constexpr double list_margin = 0.24;
/// And sweeps after a step's first pass over those that are farther apart than this.
constexpr double sweep_margin = 0.02;

} // namespace

Pull::Pull(Curve start, double pin)
    : curve_(std::move(start)), pin_(pin), previous_(curve_.points) {
    Expects(curve_.points.size() >= 3 && pin >= 0.0);
    find_neighbours();
}

std::size_t Pull::segments_apart() const {
    const double mesh = length_of(curve_) / static_cast<double>(curve_.segments());
    return static_cast<std::size_t>(std::ceil(std::numbers::pi / 2.0 / mesh)) + 1;
}

void Pull::find_neighbours() {
    neighbours_ = near_pairs(curve_, 1.0 + list_margin, segments_apart());
    listed_at_ = curve_.points;
}

void Pull::steps(std::size_t count, Strength strength) {
    for (std::size_t step = 0; step < count; ++step) {
        advance(strength);
        touching_.clear();
        for (const NearPair& pair : neighbours_) {
            const auto [i, j] = pair;
            const auto closest = approach(curve_.begin_of(i), curve_.end_of(i), curve_.begin_of(j),
                                          curve_.end_of(j));
            if (closest.distance < 1.0 + sweep_margin) {
                touching_.push_back(pair);
            }
        }
        const double mesh = length_of(curve_) / static_cast<double>(curve_.segments());
        // A turn of 2 atan(mesh) between segments is a bend of half a diameter's radius.
        deepest_bend_ = mesh * std::sin(std::atan(mesh));
        for (int sweep = 0; sweep < sweeps; ++sweep) {
            const bool backwards = sweep % 2 != 0;
            open_bends(backwards);
            part_strands(backwards);
            hold_off_pin(backwards);
        }
    }
}

void Pull::advance(Strength strength) {
    std::vector<Point>& points = curve_.points;
    double farthest = 0.0;
    std::vector<Point> next = points;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!may_move(i)) {
            continue;
        }
        const Point pulled = points[before(i)] + points[after(i)] - 2.0 * points[i];
        Point step =
            strength.momentum * (points[i] - previous_[i]) + (0.5 * strength.tension) * pulled;
        const double length = norm(step);
        if (length > longest_step) {
            step = (longest_step / length) * step;
        }
        next[i] = points[i] + step;
        farthest = std::max(farthest, norm(next[i] - listed_at_[i]));
    }
    previous_ = std::exchange(points, std::move(next));
    if (farthest > list_margin / 2.0 - longest_step) {
        find_neighbours();
    }
}

void Pull::part_strands(bool backwards) {
    if (backwards) {
        std::for_each(touching_.rbegin(), touching_.rend(), [&](NearPair pair) { part(pair); });
    } else {
        std::ranges::for_each(touching_, [&](NearPair pair) { part(pair); });
    }
}

void Pull::part(NearPair pair) {
    const std::array<std::size_t, 4> at{pair.first, after(pair.first), pair.second,
                                        after(pair.second)};
    std::vector<Point>& points = curve_.points;
    const auto closest = approach(points[at[0]], points[at[1]], points[at[2]], points[at[3]]);
    if (closest.distance >= 1.0 || !(closest.distance > 0.0)) {
        return;
    }
    const std::array<double, 4> weight{1.0 - closest.on_first, closest.on_first,
                                       closest.on_second - 1.0, -closest.on_second};
    double squares = 0.0;
    for (std::size_t k = 0; k < at.size(); ++k) {
        squares += may_move(at[k]) ? weight[k] * weight[k] : 0.0;
    }
    if (!(squares > 0.0)) {
        return;
    }
    const double push = (1.0 - closest.distance) / (closest.distance * squares);
    for (std::size_t k = 0; k < at.size(); ++k) {
        if (may_move(at[k])) {
            points[at[k]] = points[at[k]] + (push * weight[k]) * closest.step;
        }
    }
}

void Pull::hold_off_pin(bool backwards) {
    const std::size_t count = pin_ > 0.0 ? curve_.segments() : 0;
    for (std::size_t i = 0; i < count; ++i) {
        hold_off_pin_at(backwards ? count - 1 - i : i);
    }
}

namespace {

/// Where a segment comes closest to the z axis: how far along it, and the step from there to it.
Approach approach_to_axis(Point begin, Point end) {
    const Point from{begin.x, begin.y, 0.0};
    const Point along{end.x - begin.x, end.y - begin.y, 0.0};
    const double square = dot(along, along);
    Approach closest;
    closest.on_first = square > 0.0 ? std::clamp(-dot(from, along) / square, 0.0, 1.0) : 0.0;
    closest.step = from + closest.on_first * along;
    closest.distance = norm(closest.step);
    return closest;
}

} // namespace

/// A whole segment is held off, not its ends alone, so that the chain lies outside the pin.
void Pull::hold_off_pin_at(std::size_t segment) {
    Point& begin = curve_.points[segment];
    Point& end = curve_.points[after(segment)];
    const auto closest = approach_to_axis(begin, end);
    if (closest.distance >= pin_ || !(closest.distance > 0.0)) {
        return;
    }
    const double on_begin = may_move(segment) ? 1.0 - closest.on_first : 0.0;
    const double on_end = may_move(after(segment)) ? closest.on_first : 0.0;
    const double squares = on_begin * on_begin + on_end * on_end;
    if (!(squares > 0.0)) {
        return;
    }
    const double push = (pin_ - closest.distance) / (closest.distance * squares);
    begin = begin + (push * on_begin) * closest.step;
    end = end + (push * on_end) * closest.step;
}

void Pull::open_bends(bool backwards) {
    const std::size_t count = curve_.points.size();
    for (std::size_t i = 0; i < count; ++i) {
        open_bend(backwards ? count - 1 - i : i);
    }
}

void Pull::open_bend(std::size_t at) {
    if (!may_move(at)) {
        return;
    }
    std::vector<Point>& points = curve_.points;
    const std::size_t back = before(at);
    const std::size_t ahead = after(at);
    const Point off = 0.5 * (points[back] + points[ahead]) - points[at];
    const double depth = norm(off);
    if (depth <= deepest_bend_) {
        return;
    }
    // The point moves towards the middle of its neighbours, and each of them half as far from it.
    const double squares = 1.0 + (may_move(back) ? 0.25 : 0.0) + (may_move(ahead) ? 0.25 : 0.0);
    const Point step = ((depth - deepest_bend_) / (depth * squares)) * off;
    points[at] = points[at] + step;
    for (const std::size_t beside : {back, ahead}) {
        if (may_move(beside)) {
            points[beside] = points[beside] - 0.5 * step;
        }
    }
}

double Pull::clearance() const {
    double least = 1.0;
    for (const auto& [i, j] : near_pairs(curve_, 1.0, segments_apart())) {
        const auto closest =
            approach(curve_.begin_of(i), curve_.end_of(i), curve_.begin_of(j), curve_.end_of(j));
        least = std::min(least, closest.distance);
    }
    return least;
}

double Pull::clearance_of_pin() const {
    double least = 1.0;
    for (std::size_t i = 0; pin_ > 0.0 && i < curve_.segments(); ++i) {
        const auto closest = approach_to_axis(curve_.begin_of(i), curve_.end_of(i));
        least = std::min(least, closest.distance / pin_);
    }
    return least;
}

} // namespace libsplice
