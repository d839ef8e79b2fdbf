// The chance that a line falls outside its tolerance, and that the lines of a pair differ.
#pragma once

#include "libsplice/cut/piece.h"

namespace libsplice {

/// Sets the chance that the finished length falls outside the tolerance once the check has read
/// right, and its largest cause; nothing where no tolerance is given.
void add_chance(const BoundLine& line, Piece& piece);

/// The chance that two lines made like this piece, of one rope and by one hand, differ by more than
/// `tolerance`. What they share falls out: their rope, their tape, what the sources leave open.
[[nodiscard]] double chance_apart(const BoundLine& line, const Piece& piece, Nanometres tolerance);

} // namespace libsplice
