// How the spans of a shape are named and drawn, form by form.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/drawing/outline.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// The words for a span: `2 turns round 40 mm`, `in the knot, 4 crossings`, `goes inside`.
[[nodiscard]] std::string words_of(const Span& span, UnitSystem units);

/// Fills a span's outline with what tells its form without colour: a pattern, and a small figure
/// for every turn, tuck, clip or crossing that is counted. `part` is the span in the drawing, `y`
/// the height of its centreline.
void append_look(std::string& into, const Span& span, const OutlinePart& part, double y);

/// The patterns that spans are filled with; once on a page. `#p-over` hatches rope that is trimmed.
[[nodiscard]] std::string_view drawing_patterns();

} // namespace libsplice
