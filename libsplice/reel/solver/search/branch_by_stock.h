// Branching on how many of each stock are used: it raises the bound, or finds what is under it.
#pragma once

#include "libsplice/reel/solver/search/dive.h"

#include <random>

namespace libsplice {

/// Splits the first goal's question at a stock whose number is not whole, the part with the lowest
/// bound first, and dives in each. Better plans and a higher bound go to `best`. Expects the first
/// goal.
void branch_by_stock(const DiveTools& tools, BestPlan& best, int most_branches,
                     std::minstd_rand& random);

} // namespace libsplice
