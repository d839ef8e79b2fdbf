// Rope that turns round a post use up, and the capstan equation for what they hold.
#include "libsplice/mechanics/rope/hitch.h"

#include <gsl/assert>

#include <cmath>
#include <numbers>

namespace libsplice {

namespace {

constexpr double full_turn = 2.0 * std::numbers::pi;

} // namespace

Length round_turn(Length around, Length diameter) {
    return (around + diameter) * std::numbers::pi;
}

Length turn_round_two(Length first, Length second, Length gap, Length diameter) {
    Expects(first.si() > 0.0 && second.si() > 0.0 && gap.si() >= 0.0);
    const double r = (first + diameter).si() / 2.0;
    const double s = (second + diameter).si() / 2.0;
    const double apart = (gap + (first + second) / 2.0).si();
    const double step = r - s;
    const double legs = 2.0 * std::sqrt((apart - step) * (apart + step));
    return Length(legs + std::numbers::pi * (r + s) + 2.0 * step * std::asin(step / apart));
}

double load_past(double turns, double friction) {
    Expects(turns >= 0.0 && friction > 0.0);
    return std::exp(-full_turn * friction * turns);
}

double turns_to_hold(double ratio, double friction) {
    Expects(ratio >= 1.0 && friction > 0.0);
    return std::log(ratio) / (full_turn * friction);
}

double clove_hitch_margin(Length post, Length diameter, double on_post, double on_rope) {
    Expects(diameter.si() > 0.0);
    const double cosine = (post + diameter) / (post + 3.0 * diameter);
    const double pinch = 2.0 * std::sqrt(1.0 - cosine * cosine) * (on_post + on_rope);
    return pinch * std::exp(full_turn * on_post);
}

} // namespace libsplice
