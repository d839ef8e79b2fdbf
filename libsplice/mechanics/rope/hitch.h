// Rope round a post: what turns use up and hold, and whether a clove hitch holds by itself.
#pragma once

#include "libsplice/units/quantity.h"

namespace libsplice {

/// Rope in one full turn round a thing of diameter `around`: the circle of the rope's centreline.
[[nodiscard]] Length round_turn(Length around, Length diameter);

/// Rope in one turn round two parallel round things of diameters `first` and `second` with `gap`
/// clear between them: a band round both. With radii r and s to the rope's centreline and C from
/// centre to centre, 2 sqrt(C^2 - (r - s)^2) + pi (r + s) + 2 (r - s) asin((r - s)/C). Diameters
/// above 0, gap 0 or more.
[[nodiscard]] Length turn_round_two(Length first, Length second, Length gap, Length diameter);

/// The share of a load that gets past `turns` full turns at friction `friction` (above 0): the
/// capstan formula, exp(-2 pi friction turns). Turns that bury each other hold more.
[[nodiscard]] double load_past(double turns, double friction);

/// Full turns at friction `friction` (above 0) that bring a load down by `ratio` (1 or more):
/// ln(ratio) / (2 pi friction).
[[nodiscard]] double turns_to_hold(double ratio, double friction);

/// How well a clove hitch holds with a slack tail; from 1 on it holds any load. The crossing strand
/// pinches the ends: with cos g = (D + d)/(D + 3 d), the margin is
/// 2 sin g (on_post + on_rope) exp(2 pi on_post). Derived after Bayman, Am. J. Phys. 45:185 (1977).
/// `post` and `diameter` are diameters, `diameter` above 0; the two coefficients are of rope on
/// post and rope on rope. A low-load approximation.
[[nodiscard]] double clove_hitch_margin(Length post, Length diameter, double on_post,
                                        double on_rope);

} // namespace libsplice
