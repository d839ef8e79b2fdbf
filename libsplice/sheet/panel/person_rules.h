// What rules ask of rope that carries a person, beside what this line has.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/panel/citation_log.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

namespace libsplice {

/// A fact for each rule, by name: what it asks, and what the line has where that is known. It
/// judges nothing.
void write_person_rules(Page& page, const Piece& piece, UnitSystem units, Citing& citing);

/// `"person_rules": [{"rule", "asks_n", "asks_factor", "source"}]`, empty on other lines.
void write_person_rules(JsonText& json, const Piece& piece, Citing& citing);

} // namespace libsplice
