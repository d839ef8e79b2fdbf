// What published rules ask of rope that carries a person, beside what this line has.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/units/show.h"

namespace libsplice {

/// The piece has a plan; nothing is written of a line that carries no person.
void write_person_rules(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing);

} // namespace libsplice
