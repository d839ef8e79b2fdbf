// How one end of a piece is marked and made, in the order of the work.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/units/show.h"

namespace libsplice {

/// The end's marks, steps, bury and cautions. Of the end made last the marks also stand from the
/// first end's bearing point.
void write_end_of_piece(Page& page, const Piece& piece, LineEnd end, UnitSystem units,
                        CitationLog& citing);

/// The figure that must be read before the last end is made, with room to write what it read.
void write_check(Page& page, const Piece& piece, UnitSystem units);

/// What to do with the rope outside the tail of the end made last.
void write_over(Page& page, const Piece& piece, UnitSystem units);

} // namespace libsplice
