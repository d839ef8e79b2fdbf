// How much longer a rope is under load than without.
#pragma once

#include "libsplice/units/quantity.h"

namespace libsplice {

/// Load against elongation as a straight line through one printed point: `strain` at `load_share`
/// of the breaking strength. Fair between the reference tension and working loads, where the
/// bedding-in of a new rope, which is kept apart, is done.
struct StretchCurve {
    double strain = 0.0;     ///< elongation at the printed point, 0.025 for 2.5 %
    double load_share = 0.0; ///< the load of the printed point as a share of breaking strength

    /// Elongation at a load given as a share of the breaking strength.
    [[nodiscard]] double at(double share) const { return strain * share / load_share; }
};

/// The length at `to_strain` of a rope that is `length` long at `from_strain`.
[[nodiscard]] constexpr Length length_at(Length length, double from_strain, double to_strain) {
    return length * ((1.0 + to_strain) / (1.0 + from_strain));
}

/// The pull at which lengths of fibre rope are measured: D^2/8 kilogram-force with D in
/// millimetres. Never for shock cord or wire, which are measured without load.
[[nodiscard]] constexpr Force reference_tension(Length diameter) {
    const double millimetre_count = diameter.si() * 1000.0;
    return Force(millimetre_count * millimetre_count / 8.0 * newtons_per_kgf);
}

} // namespace libsplice
