// The geometry of a braid whose strands keep their length while it swells.
#include "libsplice/mechanics/rope/braid.h"

#include <gsl/assert>

#include <algorithm>
#include <cmath>

namespace libsplice {

BuriedTail tapered_tail(Length tail, Length taper, double section, double section_at_end) {
    BuriedTail parts;
    parts.push_back({tail - taper, section, section});
    parts.push_back({taper, section, section_at_end});
    return parts;
}

double braid_constant(Angle braid_angle, double packing) {
    const double tangent = std::tan(braid_angle.si());
    return 2.0 * packing * tangent * tangent;
}

std::optional<double> stuffed_share(double constant, double section) {
    const double square = 1.0 - constant * section;
    // The braid jams where its strands lie at 45 degrees: the stuffed length over the empty one is
    // the ratio of the cosines, and of the empty braid cos^2 = 1/(1 + K/2).
    const double jammed = 0.5 * (1.0 + constant / 2.0);
    if (!(square > 0.0) || (section > 0.0 && square < jammed)) {
        return std::nullopt;
    }
    return std::sqrt(square);
}

std::optional<Length> host_over(const BuriedPart& part, double constant) {
    const auto start = stuffed_share(constant, part.section_at_start);
    const auto end = stuffed_share(constant, part.section_at_end);
    if (!start || !end) {
        return std::nullopt;
    }
    // The integral of dx / sqrt(1 - K a) over an even taper; written with the sum of the two shares
    // in the denominator, it holds for a part of constant section and for K = 0 as well.
    return part.length * (2.0 / (*start + *end));
}

std::optional<Length> take_up_over(std::span<const BuriedPart> tail, double constant) {
    Length take_up;
    for (const BuriedPart& part : tail) {
        const auto host = host_over(part, constant);
        if (!host) {
            return std::nullopt;
        }
        take_up += *host - part.length;
    }
    return take_up;
}

Length diameter_over_bury(Length diameter, double section) {
    return diameter * std::sqrt(1.0 + std::max(0.0, section));
}

} // namespace libsplice
