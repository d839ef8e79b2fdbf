// Plans from scratch by close fitting, each from numbers of stock that cost less than the best
// plan.
#pragma once

#include "libsplice/reel/solver/best_plan.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstdint>
#include <random>
#include <span>

namespace libsplice {

/// Close fitting cuts every piece from stock, and does not count waste.
[[nodiscard]] bool can_fit_closely(const StockProblem& problem);

/// Fits until the first goal is proved, about so much work is done or a limit is reached; better
/// plans go to `best`. `relaxed` says how many of each stock the linear programme uses; empty: not
/// known. Expects a problem that can be fitted closely, and its first goal.
void search_closely(const StockProblem& problem, std::span<const double> relaxed, BestPlan& best,
                    std::int64_t most_work, const SearchLimits& limits, std::minstd_rand& random);

} // namespace libsplice
