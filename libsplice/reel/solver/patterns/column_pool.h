// The patterns of one search, and the most profitable pattern that is not among them yet.
#pragma once

#include "libsplice/reel/solver/patterns/knapsack.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <unordered_set>
#include <vector>

namespace libsplice {

/// A pattern with what one of it costs in each goal.
struct Column {
    std::size_t stock = 0;
    std::vector<Take> takes;
    Goals price{};
};

/// A stock's filling, used in one of two ways: down to waste, or so that what is left is usable.
struct StockUse {
    std::size_t stock = 0;
    Amount capacity = 0; ///< in the sizes of the pool
    bool to_waste = false;
};

/// Sizes are lengths with the cut behind each, in the largest unit that divides them all.
class ColumnPool {
  public:
    explicit ColumnPool(const StockProblem& problem);

    [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }
    [[nodiscard]] std::span<const StockUse> uses() const { return uses_; }
    [[nodiscard]] std::span<const Amount> sizes() const { return sizes_; }
    [[nodiscard]] Amount unit() const { return unit_; }
    /// Adds a pattern; false if it is known already.
    bool add(std::size_t stock, std::vector<Take> takes);

    /// What a filling is paid for: prices of items, and weights of the goals, in units of 1/scale.
    struct Offer {
        std::span<const Amount> prices;     ///< by item
        std::span<const std::int64_t> most; ///< by item
        std::array<Amount, most_goals> weights{};
        std::vector<Amount> beat; ///< by use: only what brings more over its cost is looked for
        bool exact = false;       ///< whether `over` must be as low as can be, whatever it takes
    };
    struct Best {
        Amount over = 0;         ///< no pattern brings more than this over its cost
        std::vector<Take> takes; ///< empty if none brings more than `beat`
    };
    /// By use: the pattern that brings most over its cost.
    [[nodiscard]] std::vector<Best> best_of_each(const Offer& offer);

  private:
    struct Cost;
    [[nodiscard]] Cost cost_of(const StockUse& use, const Offer& offer) const;
    [[nodiscard]] std::vector<KnapsackItem> items_for(const StockUse* use, const Offer& offer,
                                                      Amount slope) const;

    const StockProblem& problem_;
    std::vector<Column> columns_;
    std::unordered_set<std::string> known_;
    std::vector<Amount> sizes_;
    std::vector<StockUse> uses_;
    Amount unit_ = 1;
    Amount largest_capacity_ = 0;
    KnapsackTable table_;   ///< made again for every offer
    bool all_alike_ = true; ///< every piece may come from every stock, and nothing is wasted
};

/// The takes of counts by item.
[[nodiscard]] std::vector<Take> takes_of(std::span<const std::int32_t> counts);

} // namespace libsplice
