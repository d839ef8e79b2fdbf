// The steps of a line with a piece's own figures.
#pragma once

#include "libsplice/cut/piece.h"

namespace libsplice {

/// Sets the steps of a piece whose ledger, marks and check are there: its line's, with its own
/// figures.
void add_steps(const BoundLine& line, Piece& piece);

} // namespace libsplice
