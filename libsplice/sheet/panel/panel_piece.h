// What stands on a piece's panel besides its head and its ends.
#pragma once

#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/writer.h"

namespace libsplice {

/// What the ends retain, and the design factor where the load is known.
void write_strength(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing);

/// The ledger, worked out if that is asked for.
void write_ledger_of_piece(Page& page, const Piece& piece, const SheetOptions& options,
                           CitationLog& citing);

/// The counts of the sheet, what every sheet says, and where its figures come from.
void write_foot(Page& page, const Counts& counts, const SheetOptions& options, Credits credits,
                const CitationLog& citing);

} // namespace libsplice
