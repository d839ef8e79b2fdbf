// One side of a join whose ends are led inside each other.
#pragma once

#include "libsplice/allowance/parts/bury_part.h"

namespace libsplice {

/// One side of a join in which each end is led inside the other: rows, marks and facts of the bury,
/// and the mark where the two ends meet.
[[nodiscard]] End buried_side(const Request& request, const BuryPart& bury, Cut cut);

} // namespace libsplice
