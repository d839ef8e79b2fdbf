// A drawing of a rope's ends laid out straight, to scale along the rope, with every mark where it
// is put on.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/units/show.h"

#include <string>
#include <string_view>

namespace libsplice {

/// The ends of one piece, end a on the left, end b on the right, and what lies between them broken
/// out. Distances along the rope are to one scale; its thickness is drawn larger than it is. Marks
/// have `data-end`, `data-mark` and, in `x`, their place. The piece has a plan. Returns the
/// drawing's height over its width.
double append_drawing(std::string& into, const Piece& piece, UnitSystem units);

/// One end by itself, or both sides of one that is made at both ends of a piece.
double append_drawing(std::string& into, const KindDeclaration& kind, const End& allowance,
                      Length diameter, const Names& names, UnitSystem units);

} // namespace libsplice
