// Compares two ropes by strength and by stretch at a share of it.
#include "libsplice/mechanics/rope/equal_stretch.h"

#include <gsl/assert>

#include <cmath>

namespace libsplice {

Force stiffness(Force load, double strain) {
    Expects(strain > 0.0);
    return load / strain;
}

std::optional<Force> strength_for_stretch(const StretchCurve& curve, Force load, double strain) {
    Expects(strain > 0.0);
    const auto share = curve.load_at(strain);
    return share ? std::optional(load / *share) : std::nullopt;
}

Length size_for_strength(Length known, Force strength, Force needed) {
    Expects(strength > Force());
    return known * std::sqrt(needed / strength);
}

} // namespace libsplice
