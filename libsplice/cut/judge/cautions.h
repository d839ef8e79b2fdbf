// What to be careful of: what holds for every piece of a line, and what its length brings.
#pragma once

#include "libsplice/cut/piece.h"

#include <vector>

namespace libsplice {

/// The cautions of a line that do not depend on its length: those of its ends, of its load, of the
/// person, cover, holes, states and wear. The line is complete but for them.
[[nodiscard]] std::vector<PieceCaution> cautions_of_line(const BoundLine& line);

/// Sets the cautions of a piece: its line's, and those that its length brings.
void add_cautions(const BoundLine& line, Piece& piece);

} // namespace libsplice
