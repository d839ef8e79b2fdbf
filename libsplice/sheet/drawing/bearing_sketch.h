// A sketch of an end as made, with a dot on its bearing point: what a tape is held to.
#pragma once

#include "libsplice/cut/piece.h"

#include <string>

namespace libsplice {

/// The end with its eye, turns, knot or fitting, eye and pin in proportion, the standing part to
/// the right of end a and to the left of end b; beneath it the datum in words. `allowance` is the
/// end's, of the kind `kind`.
void append_bearing_sketch(std::string& into, const KindDeclaration& kind, const End& allowance,
                           LineEnd end = LineEnd::a);

} // namespace libsplice
