// Lacings: one line to and fro between two edges, or round a rail.
#pragma once

#include "libsplice/mechanics/routes/polyline.h"
#include "libsplice/mechanics/routes/way.h"

#include <span>

namespace libsplice {

// All lengths are of the rope's centreline. Sizes are 0 or more. Rows of eyelets are the centres of
// the eyelets or pins in order along an edge, straight or curved; `spaced_evenly` sets them out.

/// A zigzag of `legs` legs between two straight rows of pins `gap` apart, each leg going on by
/// `advance`; `edge` is the diameter of the pins or of the eyelets' edges that the rope turns on.
/// With R = (edge + rope)/2, C = sqrt(gap^2 + advance^2) and tau = atan(advance/gap) - asin(2R/C) a
/// leg is sqrt(C^2 - 4R^2) and either two of them are joined by an arc of R (pi - 2 tau). `gap`
/// above 0. Faults: too_few (no legs), cannot_pass (C below 2R). Elementary geometry.
[[nodiscard]] OrWayFault<WayLength> zigzag_lacing(std::size_t legs, Length gap, Length advance,
                                                  Length edge, Length diameter);

/// The same between any two rows: the rope takes the first pin of `first`, the first of `second`,
/// the second of `first` and so on, and turns one way at the one row, the other way at the other. A
/// leg of C between centres is sqrt(C^2 - 4R^2); the arc at a pin turns by as much as the centres'
/// polyline and by asin(2R/C) for either leg. Exact where the pins lie in one plane.
/// Faults: too_few (no leg), rows_unlike (`first` may have as many pins as `second` or one more),
/// same_place, cannot_pass, turns_one_way (the rows run in opposite ways, or cross). Their `at`
/// counts the pins in the order that the rope takes them.
[[nodiscard]] OrWayFault<WayLength> zigzag_lacing(std::span<const Position> first,
                                                  std::span<const Position> second, Length edge,
                                                  Length diameter);

/// `loops` loops round a straight rail of diameter `rail`, one from each eyelet, whose centre lies
/// `gap` from the rail's; the eyelets are `pitch` apart. With R = (rail + rope)/2 a loop in the
/// plane is l = 2 sqrt(gap^2 - R^2) + R (pi + 2 asin(R/gap)); laid along the rail, sqrt(l^2 +
/// pitch^2). `gap` above 0; an eyelet counts as a point. Faults: too_few (no loops), rail_too_near
/// (gap below R). Elementary geometry, exact once unrolled.
[[nodiscard]] OrWayFault<Length> rail_lacing(std::size_t loops, Length gap, Length rail,
                                             Length pitch, Length diameter);

/// The same with one loop from each of a row of eyelets. The pitch of a loop is the mean of the
/// distances to its eyelet's neighbours, at an end of the row that to its only one. Faults: too_few
/// (fewer than two eyelets), rail_too_near.
[[nodiscard]] OrWayFault<Length> rail_lacing(std::span<const Position> eyelets, Length gap,
                                             Length rail, Length diameter);

/// A criss-cross over `pairs` pairs of eyelets, rows `gap` and pairs `pitch` apart: straight across
/// the first pair, then both ends crossing to every next pair, gap + 2 (n - 1) sqrt(gap^2 +
/// pitch^2). Rope and eyelets count as thread and points. Fault: too_few (fewer than two pairs).
/// After Halton, Math. Intelligencer (1995), worked out anew.
[[nodiscard]] OrWayFault<Length> criss_cross_lacing(std::size_t pairs, Length gap, Length pitch);

/// The same over any two rows, from eyelet to eyelet. Faults: too_few, rows_unlike.
[[nodiscard]] OrWayFault<Length> criss_cross_lacing(std::span<const Position> first,
                                                    std::span<const Position> second);

/// A straight lacing over `pairs` pairs of eyelets, rows `gap` and pairs `pitch` apart: straight
/// across every pair but the last, every other pair on the way out and the rest on the way back,
/// (n - 1) gap + 2 sqrt(gap^2 + pitch^2) + (n - 2) sqrt(gap^2 + 4 pitch^2). Both ends come out at
/// the last pair. Rope and eyelets count as thread and points. Fault: too_few (fewer than two
/// pairs). After Polster, Nature 420:476 (2002), worked out anew.
[[nodiscard]] OrWayFault<Length> straight_lacing(std::size_t pairs, Length gap, Length pitch);

/// The same over any two rows, from eyelet to eyelet. Faults: too_few, rows_unlike.
[[nodiscard]] OrWayFault<Length> straight_lacing(std::span<const Position> first,
                                                 std::span<const Position> second);

/// `turns` turns (above 0) round a straight thing of diameter `around`, each going on by `pitch`: a
/// helix of turns sqrt((pi (around + rope))^2 + pitch^2). Elementary geometry.
[[nodiscard]] Length spiral_lacing(double turns, Length around, Length pitch, Length diameter);

} // namespace libsplice
