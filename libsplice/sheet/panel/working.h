// How each row of a ledger is worked out, with its numbers, for a colleague with a pocket
// calculator.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// A formula with its numbers, in one line of text.
[[nodiscard]] std::string show_working(const Working& working, UnitSystem units);

/// The working of `piece.ledger[at]`: formula and numbers in one line of text.
[[nodiscard]] std::string working_of(const Piece& piece, std::size_t at, UnitSystem units);

/// The whole ledger, row by row: length, working, spread and its origin, source, and the running
/// sum.
void write_working(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing);

} // namespace libsplice
