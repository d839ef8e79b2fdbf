// What a line is led through and what is asked of it, as JSON.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/words/citation_log.h"

namespace libsplice {

/// The key `route`: null for a line that is given by its length.
void write_route(JsonText& json, const Piece& piece);

/// The key `person_rules`: what is asked of rope that carries a person.
void write_person_rules(JsonText& json, const Piece& piece, CitationLog& citing);

} // namespace libsplice
