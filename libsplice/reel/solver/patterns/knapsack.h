// The best filling of one length: an exact bounded knapsack in whole numbers.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <span>
#include <vector>

namespace libsplice {

struct KnapsackItem {
    Amount size = 0; ///< over 0
    Amount profit = 0;
    std::int64_t most = 0;
};

struct KnapsackTask {
    std::span<const KnapsackItem> items;
    Amount capacity = 0;
    /// Profits hold `slope` for each unit of size, of which a filling may keep this much at the
    /// most.
    Amount slope = 0;
    Amount most_from_slope = 0;
    Amount beat = 0;                     ///< only a filling worth more than this is looked for
    std::int64_t most_steps = 1'000'000; ///< of the tree search
    bool exact = true; ///< where the steps do not suffice, a table may take the time that it needs
};

struct Filling {
    Amount value = 0;                 ///< of `counts`; `beat` if nothing is worth more
    Amount at_most = 0;               ///< no filling is worth more
    std::vector<std::int32_t> counts; ///< by item; empty if nothing is worth more
};

class KnapsackTable;

/// Fills the capacity. Branch and bound by profit per size, and where that takes too many steps a
/// table, if an exact answer is wanted and the capacity is small enough for one; else `at_most` may
/// be more than `value`.
[[nodiscard]] Filling fill_knapsack(const KnapsackTask& task, KnapsackTable& table);

/// The best value of every filling up to a capacity, by dynamic programming. One table may be made
/// again and again: it keeps its memory.
class KnapsackTable {
  public:
    /// How many values it would work out.
    [[nodiscard]] static Amount work(std::span<const KnapsackItem> items, Amount capacity);
    /// Makes the table; `items` outlive its use.
    void make(std::span<const KnapsackItem> items, Amount capacity);
    /// The best filling of the task's capacity, slope and worth; its items are the table's own.
    [[nodiscard]] Filling best(const KnapsackTask& task) const;

  private:
    /// So many of an item, taken or not as one.
    struct Bundle {
        std::size_t item;
        std::int32_t count;
    };
    [[nodiscard]] static std::vector<Bundle> bundles_of(std::span<const KnapsackItem> items,
                                                        Amount capacity);
    void add(std::size_t bundle);
    [[nodiscard]] std::vector<std::int32_t> trace(std::size_t fill) const;

    std::span<const KnapsackItem> items_;
    std::vector<Bundle> bundles_;
    std::size_t width_ = 0;      ///< fillings from 0 to the capacity
    std::size_t fullest_ = 0;    ///< of the bundles that have been added
    std::vector<Amount> values_; ///< by exact filling; below 0: there is none
    std::vector<char> taken_;    ///< by bundle and filling
};

} // namespace libsplice
