// A bound that holds whatever rounding did to the prices it is made of.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <span>

namespace libsplice {

/// What one stock can bring at the given prices of items.
struct StockReach {
    Amount each = 0; ///< what one costs
    Amount best = 0; ///< no filling's items are worth more, in units of 1/scale
    std::int64_t available = no_limit;
    std::int64_t least = 0; ///< so many are used in any case
    bool scales = true; ///< its cost does not depend on the filling, so that prices may be scaled
};

/// Whole prices of items, in units of 1/scale, and how many of each are wanted.
struct ItemPrices {
    std::span<const Amount> prices;
    std::span<const std::int64_t> counts;
    Amount scale = 1;
};

/// The least cost that any plan can have, rounded up to a whole multiple of `step`. Prices that no
/// stock beats are a solution of the dual of the linear programme, and its value is a bound. Where
/// a stock without a limit beats them, all are scaled down until none does (Farley 1990); a stock
/// with a limit is charged for what it brings too much, and one of which some must be used, for
/// what it does not bring. Worked out in whole numbers of 128 bits.
[[nodiscard]] Amount safe_bound(const ItemPrices& items, std::span<const StockReach> stocks,
                                Amount step);

} // namespace libsplice
