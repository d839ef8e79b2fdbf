// Items made whole: what one side needs, counted for both.
#pragma once

#include "libsplice/allowance/kind.h"

namespace libsplice {

/// Doubles every row of an item whose two sides are made alike. One hand makes both in one braid,
/// so that their spreads are added up. Marks and values stay those of one side.
void count_both_sides(End& allowance);

} // namespace libsplice
