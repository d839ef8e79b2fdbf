// An arc round the pin and two tangents from it to the throat.
#include "libsplice/mechanics/rope/eye.h"

#include <cmath>
#include <numbers>

namespace libsplice {

std::optional<Teardrop> teardrop_eye(Length pin, Length diameter, Length throat_distance,
                                     Length leg_offset) {
    const double radius = (pin + diameter).si() / 2.0;
    const double h = throat_distance.si();
    const double w = leg_offset.si();
    if (!(h >= radius) || !(radius > 0.0) || w < 0.0) {
        return std::nullopt;
    }
    const double rho = std::hypot(h, w);
    const double leg = std::sqrt((rho - radius) * (rho + radius));
    const double beta = std::asin(radius / rho) - std::atan2(w, h);
    return Teardrop{Length(radius * (std::numbers::pi + 2.0 * beta) + 2.0 * leg),
                    Angle(2.0 * beta)};
}

std::optional<Length> throat_distance(Length pin, Length diameter, Length rope_round,
                                      Length leg_offset) {
    Length nearest = (pin + diameter) / 2.0;
    const auto tightest = teardrop_eye(pin, diameter, nearest, leg_offset);
    if (!tightest || tightest->rope_round > rope_round) {
        return std::nullopt;
    }
    // The rope grows with the throat's distance, and by at least as much as a straight leg does.
    Length farthest = nearest + rope_round;
    for (int halving = 0; halving < 200; ++halving) {
        const Length middle = (nearest + farthest) / 2.0;
        if (teardrop_eye(pin, diameter, middle, leg_offset)->rope_round < rope_round) {
            nearest = middle;
        } else {
            farthest = middle;
        }
    }
    return (nearest + farthest) / 2.0;
}

} // namespace libsplice
