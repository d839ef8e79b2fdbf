// From the optimiser's patterns to cuts with names, an order list and a ledger.
#pragma once

#include "libsplice/reel/rope_problem.h"

namespace libsplice {

/// Gives every piece of the plan to a line, in the order of the job, and works out what is ordered,
/// bought by the metre, and left. Its quality is of the first goal, with what minimum orders and
/// rope that the stock lacks add to it.
[[nodiscard]] ReelPlan cut_list(const ReelQuestion& question, const RopeShare& share,
                                const RopeProblem& asked, const StockPlan& plan);

} // namespace libsplice
