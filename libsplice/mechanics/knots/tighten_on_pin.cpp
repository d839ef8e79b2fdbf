// Pulls a knot tight round a pin, and takes off the rope that only leads away.
#include "libsplice/mechanics/knots/tighten_on_pin.h"

#include "libsplice/mechanics/knots/knot_determinant.h"
#include "libsplice/mechanics/knots/pull.h"
#include "libsplice/mechanics/knots/settle.h"
#include "libsplice/mechanics/rope/eye.h"

#include <gsl/assert>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace libsplice {

namespace {

/// Where a loop knot lies along its pull, between the outermost points of its bights.
struct Body {
    double lower = 0.0;
    double upper = 0.0;
};

/// The x of a turning point, by the parabola through it and its neighbours.
double turning_at(double before, double here, double after) {
    const double curved = before - 2.0 * here + after;
    return !(std::abs(curved) > 0.0) ? here
                                     : here - (before - after) * (before - after) / (8.0 * curved);
}

/// The lowest point of all is the loop's crown; every other turn back towards the pull or away from
/// it lies in the knot.
std::optional<Body> body_of(const Curve& rope) {
    const auto& points = rope.points;
    const auto crown = std::ranges::min_element(points, {}, &Point::x);
    std::optional<double> lower;
    std::optional<double> upper;
    for (auto at = points.begin() + 1; at + 1 < points.end(); ++at) {
        const double before = (at - 1)->x;
        const double after = (at + 1)->x;
        const double turning = turning_at(before, at->x, after);
        if (at != crown && at->x < before && at->x <= after) {
            lower = std::min(lower.value_or(turning), turning);
        } else if (at->x > before && at->x >= after) {
            upper = std::max(upper.value_or(turning), turning);
        }
    }
    if (!lower || !upper || *lower >= *upper) {
        return std::nullopt;
    }
    return Body{*lower - 0.5, *upper + 0.5};
}

/// Both ends of a loop knot's line held anew, `tail` above the knot and as far apart as the legs
/// lie on the pin. The long legs are made shorter by what is more than `leg` of each.
Curve with_short_ends(const Curve& rope, double pin) {
    constexpr double tail = 4.5;
    constexpr double leg = 5.0;
    const auto body = body_of(rope);
    const double radius = centreline_radius(pin);
    if (!body || body->lower < radius) {
        return rope;
    }
    const auto in_reach = [&](const Point& at) {
        return at.x <= body->upper + tail - 0.5;
    };
    const auto first = std::ranges::find_if(rope.points, in_reach);
    const auto last = std::find_if(rope.points.rbegin(), rope.points.rend(), in_reach).base();
    const double spare = std::max(0.0, body->lower - leg - radius);
    const double top = body->upper + tail - spare;
    const double side = first->y > (last - 1)->y ? radius : -radius;
    Curve led{{{top, side, 0.0}}, false};
    for (auto at = first; at != last; ++at) {
        if (at->x <= radius) {
            led.points.push_back(*at);
        } else if (at->x >= radius + spare) {
            led.points.push_back(*at - Point{spare, 0.0, 0.0});
        }
    }
    led.points.push_back({top, -side, 0.0});
    return led;
}

class PinWork {
  public:
    PinWork(Curve start, double pin, const Telling& telling)
        : curve_(std::move(start)), pin_(pin), telling_(telling) {}

    /// `cuts_short`: whether tails and legs are cut short on the way.
    void run(const Stage& stage, bool cuts_short = false) {
        if (!going_on_) {
            return;
        }
        Pull pull(respaced(curve_, stage.mesh), centreline_radius(pin_));
        going_on_ = settle(pull, stage, telling_, length_of, [&](const Curve& rope, int block) {
            return tidied(rope, stage.mesh, cuts_short && block % blocks_between_cuts == 0);
        });
        curve_ = pull.curve();
        clearance_ = std::min(pull.clearance(), pull.clearance_of_pin());
    }

    [[nodiscard]] TightOnPin result(double mesh) const { return {curve_, clearance_, mesh, pin_}; }

  private:
    static constexpr int blocks_between_cuts = 5;

    [[nodiscard]] std::optional<Pull> tidied(const Curve& rope, double mesh,
                                             bool cuts_short) const {
        constexpr double worth_cutting = 2.0;
        const double length = length_of(rope);
        const auto anew = [&](const Curve& led) {
            return Pull(respaced(led, mesh), centreline_radius(pin_));
        };
        if (cuts_short) {
            const Curve led = with_short_ends(rope, pin_);
            if (length_of(led) < length - worth_cutting) {
                return anew(led);
            }
        }
        const double spacing = length / static_cast<double>(rope.segments());
        return spacing < 0.8 * mesh ? std::optional(anew(rope)) : std::nullopt;
    }

    Curve curve_;
    double pin_;
    double clearance_ = 1.0;
    const Telling& telling_;
    bool going_on_ = true;
};

} // namespace

std::optional<double> TightOnPin::beyond_loop() const {
    const auto body = body_of(curve);
    if (!body) {
        return std::nullopt;
    }
    const auto loop = teardrop_eye(Length(pin), Length(1.0), Length(body->lower), Length(0.5));
    if (!loop) {
        return std::nullopt;
    }
    const double standing = curve.points.front().x - body->lower;
    const double tail = curve.points.back().x - body->upper;
    return (length_of(curve) - standing - loop->rope_round.si() - tail) / clearance;
}

double TightOnPin::in_hitch() const {
    const double led = std::abs(curve.points.front().x) + std::abs(curve.points.back().x);
    return (length_of(curve) - led) / clearance;
}

double rope_in_turns(double pin, double turns) {
    return 2.0 * std::numbers::pi * centreline_radius(pin) * turns;
}

TightOnPin tighten_on_pin(const Curve& loose, double pin, PinHold hold, double mesh,
                          const Telling& telling, double haste) {
    Expects(mesh >= finest_mesh && mesh <= coarsest_mesh && haste > 0.0 && haste <= 1.0);
    Expects(!loose.closed && pin >= thinnest_pin && pin <= thickest_pin);
    PinWork work(loose, pin, telling);
    const bool cuts_short = hold == PinHold::loop;
    // Far to go, and with haste; then the same two meshes first, whichever is asked for.
    work.run({0.4, {0.3 * haste, 0.95}, 3e-2 * haste}, cuts_short);
    work.run({0.3, {0.3 * haste, 0.9}, 1e-2 * haste}, cuts_short);
    for (const double coarse : {0.2, 0.1, 0.05}) {
        if (coarse > std::min(mesh, 0.19) * 1.01) {
            work.run({coarse, {0.1 * haste, 0.95}, 1e-4}, cuts_short && coarse > 0.15);
        }
    }
    work.run({mesh, {0.05 * haste, 0.95}, 1e-4});
    work.run({mesh, {0.005, 0.95}, 1e-5});
    return work.result(mesh);
}

std::optional<std::int64_t> determinant_with_pin(const Curve& rope) {
    double size = 0.0;
    for (const Point& point : rope.points) {
        size = std::max(size, norm(point));
    }
    const double far = 4.0 * size;
    const auto led = [&](const Point& end) {
        return end + Point{end.x < 0.0 ? -far : far, 0.0, 0.0};
    };
    const auto& points = rope.points;
    // Each end to that end of the pin which is on its side of the other.
    const double up = points.back().z < points.front().z ? -far : far;
    Curve whole{points, true};
    whole.points.push_back(led(points.back()));
    whole.points.push_back({0.0, 0.0, up});
    whole.points.push_back({0.0, 0.0, -up});
    whole.points.push_back(led(points.front()));
    return knot_determinant(whole);
}

namespace {

/// What shows that a knot about its pin is still the one it was.
struct Signs {
    std::int64_t with_pin = 1;
    std::int64_t standing_half = 1; ///< of a loop: the standing part down to the crown
    std::int64_t other_half = 1;    ///< and from there to the tail

    friend bool operator==(const Signs&, const Signs&) = default;

    /// The one that tells most.
    [[nodiscard]] std::int64_t told(PinHold hold) const {
        return hold == PinHold::loop ? standing_half : with_pin;
    }
};

std::optional<Signs> signs_of(const Curve& rope, PinHold hold) {
    const auto with_pin = determinant_with_pin(rope);
    if (!with_pin) {
        return std::nullopt;
    }
    if (hold == PinHold::hitch) {
        return Signs{.with_pin = *with_pin};
    }
    const auto crown = std::ranges::min_element(rope.points, {}, &Point::x);
    const auto down = knot_determinant({{rope.points.begin(), crown + 1}, false});
    const auto back = knot_determinant({{crown, rope.points.end()}, false});
    return down && back ? std::optional(Signs{*with_pin, *down, *back}) : std::nullopt;
}

} // namespace

std::variant<TightPinKnot, TightError> tighten_pin_knot(const Curve& loose, double pin,
                                                        PinHold hold, double mesh,
                                                        const Telling& telling) {
    const auto before = signs_of(loose, hold);
    if (!before) {
        return TightError::crossings_unclear;
    }
    for (const double haste : {1.0, 0.3, 0.1}) {
        TightOnPin rope = tighten_on_pin(loose, pin, hold, mesh, telling, haste);
        const auto after = signs_of(rope.curve, hold);
        if (after == before && rope.consumed(hold)) {
            return TightPinKnot{std::move(rope), before->told(hold), after->told(hold)};
        }
    }
    return TightError::knot_changed;
}

} // namespace libsplice
