// What a line stretches, in the words of the bench.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/units/show.h"

namespace libsplice {

/// How much longer the line gets at its load or tension, and how far elastic is pulled out.
void write_stretch_facts(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing);

/// The line's length at several pulls, where a source gives its rope's stretch.
void write_lengths_at_pulls(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing);

/// The rope's stretch where it is printed: `2.8 % at 20 % of breaking strength (source)`. Empty
/// where no source gives one.
[[nodiscard]] std::string show_printed_stretch(const std::optional<RopeStretch>& stretch,
                                               CitationLog& citing);

} // namespace libsplice
