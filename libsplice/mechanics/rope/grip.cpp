// The capstan equation along a buried tail that the pull squeezes.
#include "libsplice/mechanics/rope/grip.h"

#include <boost/math/quadrature/gauss.hpp>
#include <gsl/assert>

#include <cmath>
#include <numbers>

namespace libsplice {

namespace {

/// As for the stuffed braid: strands jam at 45 degrees to the axis, where sin^2 = 1/2.
constexpr double jammed = 0.5;

double squared_sine(Angle angle) {
    const double sine = std::sin(angle.si());
    return sine * sine;
}

/// The swelling: squared ratio of the helix's diameter over a tail to the empty braid's.
double swelling(double section, double packing) {
    return 1.0 + 2.0 * packing * section;
}

} // namespace

std::optional<double> grip_per_diameter(Angle braid_angle, double section, double packing) {
    const double swollen = swelling(section, packing);
    const double empty = squared_sine(braid_angle);
    if (section > 0.0 && swollen * empty > jammed) {
        return std::nullopt;
    }
    return 2.0 * std::numbers::sqrt2 * empty * std::sqrt(swollen) / (1.0 - swollen * empty);
}

std::optional<double> grip_exponent(std::span<const BuriedPart> tail, Length diameter,
                                    const GrippingBraid& braid) {
    Expects(diameter > Length());
    double exponent = 0.0;
    for (const BuriedPart& part : tail) {
        for (const double section : {part.section_at_start, part.section_at_end}) {
            if (!grip_per_diameter(braid.braid_angle, section, braid.packing)) {
                return std::nullopt;
            }
        }
        const double change = part.section_at_end - part.section_at_start;
        const auto grip_at = [&](double place) {
            return *grip_per_diameter(braid.braid_angle, part.section_at_start + change * place,
                                      braid.packing);
        };
        using Rule = boost::math::quadrature::gauss<double, 15>;
        exponent += part.length / diameter * Rule::integrate(grip_at, 0.0, 1.0);
    }
    return exponent * braid.friction;
}

double grip_needed(double load_share) {
    Expects(load_share >= 0.0 && load_share < 1.0);
    return -std::log1p(-load_share);
}

std::optional<double> grip_margin(std::span<const BuriedPart> tail, Length diameter,
                                  const GrippingBraid& braid, double load_share) {
    Expects(load_share > 0.0);
    const auto exponent = grip_exponent(tail, diameter, braid);
    return exponent ? std::optional(*exponent / grip_needed(load_share)) : std::nullopt;
}

} // namespace libsplice
