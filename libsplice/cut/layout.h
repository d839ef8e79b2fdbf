// Where everything lies along a piece: marks, the rope between the throats, and the check.
#pragma once

#include "libsplice/cut/piece.h"

#include <array>
#include <span>

namespace libsplice {

inline constexpr std::array both_ends{LineEnd::a, LineEnd::b};

/// The end at which cover that a splice pushes along the rope comes out and is trimmed.
[[nodiscard]] LineEnd free_end(const BoundEnds& ends);

/// Rope between the two ends' standing marks.
[[nodiscard]] Nanometres room_between(const BoundLine& line, const Piece& piece);

/// Whether rope lies outside the tail of the end: spare, cover that is milked out, rope that is
/// kept.
[[nodiscard]] bool has_outside(const BoundLine& line, LineEnd end);

/// Whether rope that is never trimmed at the bench lies there.
[[nodiscard]] bool keeps_rope(const BoundLine& line, LineEnd end);

/// How many marks lie outside those of the end itself: its tail end, and where to trim if rope is
/// kept between the two.
[[nodiscard]] std::size_t marks_outside(const BoundLine& line, LineEnd end);

/// How many of those would lie on the very end of this piece, where nothing is over: 1 or 0. Such a
/// mark is not put on, and the others are numbered without it.
[[nodiscard]] std::size_t marks_on_the_very_end(const BoundLine& line, const Piece& piece,
                                                LineEnd end);

/// Whether there is a figure to check before the last end is made: the first is made, so that it
/// may have come out otherwise, or the last is cut to an exact length.
[[nodiscard]] bool has_check(const BoundLine& line);

/// Fills the marks of both ends and what lies between them; ledger and cut length stand in the
/// piece.
void place_marks(const BoundLine& line, Piece& piece);

/// The figure to check before the last end is made; none where that end is only cut.
[[nodiscard]] std::optional<Check> check_figure(const BoundLine& line, const Piece& piece);

} // namespace libsplice
