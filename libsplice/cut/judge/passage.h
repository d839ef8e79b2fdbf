// What a made line has to run over and through: sheaves, cleats and holes.
#pragma once

#include "libsplice/cut/piece.h"

#include <vector>

namespace libsplice {

/// Cautions about a bury or the end of a cover that comes to lie on the sheave, hoisted or lowered;
/// about a cover that does not reach the cleat; about what is too thick for what it has to
/// pass, and a stopper that is too small for its hole.
/// They rest on the columns headroom, travel, cleat and smallest_hole; what is not given is not
/// looked at.
void add_passage_cautions(const BoundLine& line, std::vector<PieceCaution>& cautions);

} // namespace libsplice
