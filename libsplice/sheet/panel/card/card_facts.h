// What must be known before the work on a line begins, as labelled facts of its card.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/units/show.h"

#include <string>
#include <vector>

namespace libsplice {

/// A labelled instruction or fact.
struct CardFact {
    std::string label;
    std::string text;
};

/// The pull to mark at, the finished length, how close it has to be, the state of the rope, what
/// is put on first, where the length is measured to, and what else the line needs. The piece can be
/// cut.
[[nodiscard]] std::vector<CardFact> facts_of(const Piece& piece, UnitSystem units);

/// Where the finished length starts and stops at an end.
[[nodiscard]] std::string datum_of(const BoundEnd& end, UnitSystem units);

} // namespace libsplice
