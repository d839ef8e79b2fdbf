// One rope planned: cuts, orders, and why a piece is not placed.
#pragma once

#include "libsplice/reel/rope_problem.h"

namespace libsplice {

/// Plans one rope. Costs, bounds and lengths are of this rope alone.
[[nodiscard]] ReelPlan plan_rope(const ReelQuestion& question, const RopeShare& share,
                                 const SearchLimits& limits);

} // namespace libsplice
