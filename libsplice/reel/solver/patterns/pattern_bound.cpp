// Puts prices, costs and limits of the first goal together as the safe bound asks for them.
#include "libsplice/reel/solver/patterns/pattern_bound.h"

#include "libsplice/reel/solver/patterns/safe_bound.h"

#include <algorithm>
#include <cstdint>
#include <numeric>
#include <vector>

namespace libsplice {

Amount pattern_bound(const StockProblem& problem, const GoalUnits& units, const StockLimits& limits,
                     const PatternPrices& prices) {
    std::vector<StockReach> reaches;
    std::vector<std::int64_t> counts;
    for (const StockItem& item : problem.items) {
        counts.push_back(item.count);
    }
    const std::int64_t pieces = std::accumulate(counts.begin(), counts.end(), std::int64_t{0});
    for (std::size_t s = 0; s < problem.stocks.size(); ++s) {
        const Stock& stock = problem.stocks[s];
        const bool waste = stock.waste[0];
        const std::int64_t highest = limits.highest[s];
        reaches.push_back({stock.each[0], prices.over[s] + stock.each[0] * units.scale,
                           waste ? std::min(highest, pieces) : highest,
                           limits.lowest.empty() ? 0 : limits.lowest[s], !waste});
    }
    return safe_bound({prices.prices, counts, units.scale}, reaches, units.step);
}

Amount bound_by_length(const StockProblem& problem, const ColumnPool& pool, const GoalUnits& units,
                       const StockLimits& limits) {
    const auto sizes = pool.sizes();
    std::vector<Amount> prices(sizes.size());
    Amount bound = 0;
    for (const StockUse& rate : pool.uses()) {
        const Amount each = problem.stocks[rate.stock].each[0];
        if (each == 0 || rate.to_waste || rate.capacity == 0) {
            continue;
        }
        // Of one unit of size, rounded down; a stock's filling is never more than its capacity.
        const Amount price = each * units.scale / rate.capacity;
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            prices[i] = price * sizes[i];
            if (problem.items[i].loose) {
                prices[i] = std::min(prices[i], (*problem.items[i].loose)[0] * units.scale);
            }
        }
        std::vector<Amount> over(problem.stocks.size(), 0);
        for (const StockUse& use : pool.uses()) {
            over[use.stock] =
                std::max(over[use.stock],
                         price * use.capacity - problem.stocks[use.stock].each[0] * units.scale);
        }
        bound = std::max(bound, pattern_bound(problem, units, limits, {prices, over}));
    }
    return bound;
}

} // namespace libsplice
