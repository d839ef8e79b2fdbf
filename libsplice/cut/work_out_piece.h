// From a bound line and a finished length to a finished piece.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/piece.h"

namespace libsplice {

/// Works the piece out from its line and its finished length. `piece` has its texts and nothing
/// else. The fault says why such a line cannot be made: Code::buries_overlap, Code::nothing_left.
[[nodiscard]] std::optional<LineFault> work_out_piece(const BoundLine& line, Nanometres finished,
                                                      Piece& piece);

/// Adds what the bench needs to a piece that can be cut: its marks, its steps, and its lengths at
/// several pulls.
void lay_out_work(const BoundLine& line, Piece& piece);

} // namespace libsplice
