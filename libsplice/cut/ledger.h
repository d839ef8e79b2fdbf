// The ledger of a piece: the signed lengths that add up to its cut length.
#pragma once

#include "libsplice/cut/piece.h"

namespace libsplice {

/// Fills the ledger of a piece that has none yet, with its loaded length, its cut length and what
/// lies over the tail of the end made last.
void write_ledger(const BoundLine& line, Nanometres finished, Piece& piece);

} // namespace libsplice
