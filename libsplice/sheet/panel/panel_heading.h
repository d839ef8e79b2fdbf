// The head of a piece's panel: what to cut, from what, and what it has to measure when done.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

namespace libsplice {

/// Name, boat and count under a line across the page.
void write_title(Page& page, const Piece& piece);

/// The cut length, how to mark, and the finished length. The piece has a plan.
void write_heading(Page& page, const Piece& piece, UnitSystem units);

/// What stands there for a piece that cannot be cut.
void write_refusal(Page& page, const Piece& piece, UnitSystem units);

/// `Load to 4.5 kg.`, `Lay it relaxed and straight.` or `Lay it slack.`
[[nodiscard]] std::string how_to_pull(const BoundLine& plan, UnitSystem units);

} // namespace libsplice
