// A braid that swells over a tail led inside it, and shortens.
#pragma once

#include "libsplice/base/short_list.h"
#include "libsplice/units/quantity.h"

#include <cstddef>
#include <optional>
#include <span>

namespace libsplice {

/// One stretch of a buried tail, its section given as a share of the host rope's and changing
/// evenly from its start (nearer the throat) to its end.
struct BuriedPart {
    Length length;
    double section_at_start = 1.0;
    double section_at_end = 1.0;
};

/// The most stretches of a tail: one in full section and eleven pairs dropped after it.
inline constexpr std::size_t most_buried_parts = 12;

/// A tail as it lies in its host, from the throat to its end.
using BuriedTail = ShortList<BuriedPart, most_buried_parts>;

/// A tail of length `tail` that keeps its section over its first part and is thinned evenly over
/// the last, `taper` (at most the tail), to `section_at_end`.
[[nodiscard]] BuriedTail tapered_tail(Length tail, Length taper, double section = 1.0,
                                      double section_at_end = 0.0);

/// The rope constant K of a braid whose strands lie at `braid_angle` to the axis while it is empty,
/// with the tail packed by `packing` (1: as the rope itself): K = 2 packing tan^2(angle). From
/// strands of fixed length per turn; it falls when the rope is under tension.
[[nodiscard]] double braid_constant(Angle braid_angle, double packing = 1.0);

/// Length of a braid over a tail of section `section`, as a share of its empty length:
/// sqrt(1 - K section). Nothing where the strands would lie at more than 45 degrees to the axis,
/// where a braid jams (from memory: 45 to 50 degrees): such a tail does not go in.
[[nodiscard]] std::optional<double> stuffed_share(double constant, double section);

/// Host rope, measured while it is empty, that one part of a buried tail takes up; nothing where
/// the tail does not go in.
[[nodiscard]] std::optional<Length> host_over(const BuriedPart& part, double constant);

/// Host rope that a buried tail takes up beyond the tail's own length; nothing where it does not go
/// in.
[[nodiscard]] std::optional<Length> take_up_over(std::span<const BuriedPart> tail, double constant);

/// Outer diameter of a rope of diameter `diameter` over a tail of section `section`: d sqrt(1 +
/// section).
[[nodiscard]] Length diameter_over_bury(Length diameter, double section = 1.0);

} // namespace libsplice
