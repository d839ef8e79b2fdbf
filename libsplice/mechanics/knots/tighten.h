// How much rope a knot uses at its tightest, from its shape alone.
#pragma once

#include "libsplice/mechanics/knots/curve.h"

#include <cstdint>
#include <functional>
#include <variant>

namespace libsplice {

/// A rope drawn up as far as it goes: perfectly flexible, without friction, and round however hard
/// it bends (an ideal rope), points of its centreline `mesh` apart. Lengths in rope diameters.
struct TightRope {
    Curve curve;
    double clearance = 1.0; ///< closest approach of two strands, at most 1
    double mesh = 0.0;

    /// Rope taken up by the knot in an open line: its length less the distance of its ends, made
    /// larger by what strands lie nearer than a diameter, so that it errs on the long side.
    [[nodiscard]] double consumed() const { return taken_up(curve) / clearance; }
    /// The length of a closed one, likewise.
    [[nodiscard]] double ropelength() const { return length_of(curve) / clearance; }
};

/// What may be told while a rope is drawn up: the mesh that it is at, and the rope taken up so far
/// (the length of a closed one). The answer is whether to go on.
using Telling = std::function<bool(double mesh, double taken_up)>;

/// The finest and the coarsest mesh that `tighten` can work at.
inline constexpr double finest_mesh = 0.02;
inline constexpr double coarsest_mesh = 0.4;

/// Draws up a loose rope, from coarse points to fine ones. The same curve gives the same answer to
/// the last digit: nothing in it is random. An open one keeps short straight tails. `haste`, up to
/// 1, is how hard it is pulled while it is loose. Where `telling` does not go on, what was reached
/// is returned. Method: shrink on no overlaps, after Pieranski, Przybyl and Stasiak (Eur. Phys. J.
/// E 6:123, 2001), with momentum.
[[nodiscard]] TightRope tighten(const Curve& loose, double mesh, const Telling& telling = {},
                                double haste = 1.0);

/// A rope drawn up, and the determinants that show that its knot is still the one it was.
struct TightKnot {
    TightRope rope;
    std::int64_t determinant_before = 0;
    std::int64_t determinant_after = 0;
};

enum class TightError : std::uint8_t {
    crossings_unclear, ///< no determinant can be worked out for the loose rope
    knot_changed,      ///< however gently it was pulled, strands went through each other
};

/// As tighten(), with the knot's determinant before and after. Where the two differ the rope is
/// pulled once more, more gently.
[[nodiscard]] std::variant<TightKnot, TightError> tighten_knot(const Curve& loose, double mesh,
                                                               const Telling& telling = {});

} // namespace libsplice
