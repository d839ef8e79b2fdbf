// What a line stretches, as JSON.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/words/citation_log.h"

namespace libsplice {

/// `"stretch_at_load_m"`, from the reference tension to the line's load or tension, and
/// `"elastic"`; null where there is none.
void write_stretch(JsonText& json, const Piece& piece, CitationLog& citing);

/// `"lengths_at"`: the line's length at several pulls.
void write_lengths_at_pulls(JsonText& json, const Piece& piece);

} // namespace libsplice
