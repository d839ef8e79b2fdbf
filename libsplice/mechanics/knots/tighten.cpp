// Pulls a free knot tight on finer and finer meshes, and takes off the rope that only leads
// away.
#include "libsplice/mechanics/knots/tighten.h"

#include "libsplice/mechanics/knots/knot_determinant.h"
#include "libsplice/mechanics/knots/pull.h"
#include "libsplice/mechanics/knots/settle.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <optional>
#include <span>
#include <utility>

namespace libsplice {

namespace {

double size_of(const Curve& curve) {
    return curve.closed ? length_of(curve) : taken_up(curve);
}

/// Kept of the rope that leads away from the knot on either side; and what is too little, since a
/// knot free of friction may creep along its rope and off the end.
constexpr double kept_tail = 2.0;
constexpr double short_tail = 1.0;

/// Where one strand leads up to the rest without ever turning back, it ties no knot. Its points may
/// be taken off, or more put on.
struct Tail {
    std::ptrdiff_t spare = 0; ///< points more than a tail's length short of the rest
    bool is_short = false;
};

/// `along` is how far each point lies from the end.
Tail tail_of(std::span<const double> along) {
    const auto turns_back = std::ranges::adjacent_find(along, std::greater<>());
    if (turns_back == along.end()) {
        return {};
    }
    const double knot = *std::min_element(turns_back, along.end());
    const auto kept =
        std::ranges::find_if(along, [&](double at) { return at >= knot - kept_tail; });
    return {kept - along.begin(), knot - along.front() < short_tail};
}

/// An open curve with tails as long as they need be.
Curve with_tails(const Curve& curve) {
    const Point away = direction_of(curve.points.back() - curve.points.front());
    std::vector<double> along;
    for (const Point& point : curve.points) {
        along.push_back(dot(point - curve.points.front(), away));
    }
    const Tail front = tail_of(along);
    std::ranges::reverse(along);
    std::ranges::transform(along, along.begin(), std::negate<>());
    const Tail back = tail_of(along);
    Curve led{{curve.points.begin() + front.spare, curve.points.end() - back.spare}, false};
    if (front.is_short) {
        led.points.insert(led.points.begin(), led.points.front() - kept_tail * away);
    }
    if (back.is_short) {
        led.points.push_back(led.points.back() + kept_tail * away);
    }
    return led;
}

class Work {
  public:
    Work(Curve start, const Telling& telling) : curve_(std::move(start)), telling_(telling) {}

    void run(const Stage& stage) {
        if (!going_on_) {
            return;
        }
        Pull pull(respaced(curve_, stage.mesh));
        going_on_ = settle(pull, stage, telling_, size_of,
                           [&](const Curve& curve, int) { return tidied(curve, stage.mesh); });
        curve_ = pull.curve();
        clearance_ = pull.clearance();
    }

    [[nodiscard]] TightRope result(double mesh) const { return {curve_, clearance_, mesh}; }

  private:
    /// The curve with its points at their mesh again and its tails short, where either has gone
    /// far.
    static std::optional<Pull> tidied(const Curve& curve, double mesh) {
        const double length = length_of(curve);
        const Curve led = curve.closed ? curve : with_tails(curve);
        const double spacing = length / static_cast<double>(curve.segments());
        if (std::abs(length_of(led) - length) < 1.0 && spacing > 0.8 * mesh) {
            return std::nullopt;
        }
        return Pull(respaced(led, mesh));
    }

    Curve curve_;
    double clearance_ = 1.0;
    const Telling& telling_;
    bool going_on_ = true;
};

} // namespace

TightRope tighten(const Curve& loose, double mesh, const Telling& telling, double haste) {
    Expects(mesh >= finest_mesh && mesh <= coarsest_mesh && haste > 0.0 && haste <= 1.0);
    Work work(loose, telling);
    // The same two meshes first, whichever is asked for, so that all end in the same form.
    work.run({0.3, {0.3 * haste, 0.9}, 1e-2 * haste});
    for (const double coarse : {0.2, 0.1, 0.05}) {
        if (coarse > std::min(mesh, 0.19) * 1.01) {
            work.run({coarse, {0.1 * haste, 0.95}, 2e-5});
        }
    }
    work.run({mesh, {0.05 * haste, 0.95}, 3e-5});
    work.run({mesh, {0.005, 0.95}, 3e-6});
    return work.result(mesh);
}

std::variant<TightKnot, TightError> tighten_knot(const Curve& loose, double mesh,
                                                 const Telling& telling) {
    const auto before = knot_determinant(loose);
    if (!before) {
        return TightError::crossings_unclear;
    }
    for (const double haste : {1.0, 0.3, 0.1}) {
        TightRope rope = tighten(loose, mesh, telling, haste);
        if (const auto after = knot_determinant(rope.curve); after == before) {
            return TightKnot{std::move(rope), *before, *after};
        }
    }
    return TightError::knot_changed;
}

} // namespace libsplice
