// The knots that can be tightened by name, each as loose rope.
#pragma once

#include "libsplice/mechanics/knots/curve.h"

#include <span>
#include <string_view>
#include <vector>

namespace libsplice {

/// A knot in the middle of a line, and how it is laid out loose.
struct KnotShape {
    std::string_view name;
    std::vector<Point> (*points)(); ///< an open line whose ends lead away; not yet to scale
};

[[nodiscard]] std::span<const KnotShape> knot_shapes();

/// The end led `turns` times round through its own loop, as an overhand knot has it once: a strand
/// wound 2 turns + 1 times about a ring which it follows twice, cut open on the ring's outside.
[[nodiscard]] std::vector<Point> wound_through_loop(int turns);

/// A bight twisted by `half_twists`, and one end led through its eye: a figure-eight knot with two,
/// a stevedore knot with four.
[[nodiscard]] std::vector<Point> twisted_bight(int half_twists);

/// A closed knot cut open at one of its points, which is sent infinitely far away by inversion in a
/// sphere about it; the mirror image of the knot that was given.
[[nodiscard]] std::vector<Point> laid_open(const Curve& ring, std::size_t at);

} // namespace libsplice
