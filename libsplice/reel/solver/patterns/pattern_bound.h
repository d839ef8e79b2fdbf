// A bound of the first goal, from prices of pieces and what each stock's best pattern brings.
#pragma once

#include "libsplice/reel/solver/patterns/column_pool.h"
#include "libsplice/reel/solver/patterns/goal_units.h"
#include "libsplice/reel/solver/patterns/pattern_programme.h"

#include <span>

namespace libsplice {

/// Whole prices of items, in units of 1/scale, and how far they are off.
struct PatternPrices {
    std::span<const Amount> prices; ///< by item
    std::span<const Amount> over;   ///< by stock: no pattern brings more than this over its cost
};

/// What no plan can be under that uses stock within the limits and cuts every piece of the problem.
[[nodiscard]] Amount pattern_bound(const StockProblem& problem, const GoalUnits& units,
                                   const StockLimits& limits, const PatternPrices& prices);

/// The bound of prices in proportion to length, at the rate of each stock in turn: often near the
/// best, and found at once.
[[nodiscard]] Amount bound_by_length(const StockProblem& problem, const ColumnPool& pool,
                                     const GoalUnits& units, const StockLimits& limits);

} // namespace libsplice
