// How well a hollow braid holds a tail led inside it: friction under the squeeze of the strands.
#pragma once

#include "libsplice/mechanics/rope/braid.h"
#include "libsplice/units/quantity.h"

#include <optional>
#include <span>

namespace libsplice {

/// A hollow braid as the model of its grip sees it. Derived from strands that run as helices and
/// Coulomb friction, the mathematics of a capstan; no source confirms its lengths. The grip goes as
/// the squared tangent of the braid angle and as the friction, and neither is known to better than
/// a factor of about two: a cross-check of printed buries, never a rule.
struct GrippingBraid {
    Angle braid_angle;     ///< of strand to axis, empty, under the tension considered
    double friction = 0.0; ///< of the fibre on itself, above 0
    double packing = 1.0;  ///< of the tail: 1 as the rope itself
};

/// How fast the braid takes load from a tail of section `section` (a share of its own), along one
/// of its diameters and for a friction of 1: with g = 1 + 2 packing section,
/// 2 sqrt(2) sin^2(angle) sqrt(g) / (1 - g sin^2(angle)). Nothing where the braid jams, as in
/// stuffed_share().
[[nodiscard]] std::optional<double> grip_per_diameter(Angle braid_angle, double section = 1.0,
                                                      double packing = 1.0);

/// The grip's exponent over the parts of a tail in braid of diameter `diameter` (above 0): load in
/// the braid grows by a factor of up to exp(exponent) from the throat to the tail's end. Nothing
/// where the tail does not go in.
[[nodiscard]] std::optional<double> grip_exponent(std::span<const BuriedPart> tail, Length diameter,
                                                  const GrippingBraid& braid);

/// The exponent that a tail needs so as not to slip where it carries the share `load_share` (0 to
/// below 1) of the load at the throat: ln(1/(1 - share)). 1/2 for an eye on a free pin. It grows
/// without limit: a bury with no load on the braid at the throat has no grip at all.
[[nodiscard]] double grip_needed(double load_share);

/// How many times the grip that it needs a tail has; below 1 it slips at any load, since grip and
/// load grow together.
[[nodiscard]] std::optional<double> grip_margin(std::span<const BuriedPart> tail, Length diameter,
                                                const GrippingBraid& braid, double load_share);

} // namespace libsplice
