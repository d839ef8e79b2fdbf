// One goal made small: column generation, dives and a search in whole numbers over the patterns.
#pragma once

#include "libsplice/reel/solver/column_pool.h"
#include "libsplice/reel/solver/first_fit.h"
#include "libsplice/reel/solver/master.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <random>
#include <vector>

namespace libsplice {

/// A plan on its way: what has been fixed, and what remains.
struct PartPlan {
    Remaining remaining;
    StockPlan plan;
    Goals spent{};
};

/// How many of each stock are used.
struct StockLimits {
    std::vector<std::int64_t> lowest;
    std::vector<std::int64_t> highest;
};

/// Searches for a plan that is better in one goal and not worse in those before it. The plan it is
/// given places every piece.
class GoalSearch {
  public:
    GoalSearch(const StockProblem& problem, ColumnPool& pool, std::size_t goal, StockPlan& best,
               const SearchLimits& limits);

    /// Runs until the goal is proved, `most_dives` are done or a limit is reached.
    void run(int most_dives);

    /// Plans from scratch until the goal is proved, so much work of close fitting is done or a
    /// limit is reached. Expects the first goal, its linear programme solved.
    void fit_closely(std::int64_t most_work);

    /// Splits the first goal's question by how many of each stock are used, so as to raise the
    /// bound or find what is under it. Expects the first goal.
    void branch(int most_branches);

  private:
    void add_item_columns();
    void add_pool_columns();
    void set_rows(const Remaining& remaining, const Goals& spent);
    void set_stock_rows(const StockLimits& limits);
    [[nodiscard]] std::array<Amount, most_goals> weights() const;
    void price_items(const Remaining& remaining);
    [[nodiscard]] Amount price_of_row(std::size_t row) const;
    void raise_bound_by_length();
    bool add_patterns(const Remaining& remaining, bool bounds, bool exact);
    bool generate(const Remaining& remaining, int most_rounds, bool bounds);
    void raise_bound(const std::vector<Amount>& over);

    void dive(const std::vector<std::int64_t>& stocks);
    void shut_unfit(const Remaining& remaining);
    void open_all();
    [[nodiscard]] std::vector<std::int64_t> slightly_cheaper_stocks();
    bool fix_some(PartPlan& part);
    bool fix(PartPlan& part, std::size_t column, std::int64_t times) const;
    void take_loose(PartPlan& part, std::size_t item, std::int64_t count) const;
    [[nodiscard]] std::int64_t room_for(const Remaining& remaining, const Column& column) const;
    [[nodiscard]] bool hopeless(const PartPlan& part) const;
    void finish(PartPlan part);
    [[nodiscard]] PartPlan nothing_fixed() const;

    void search_whole();
    [[nodiscard]] std::vector<double> stocks_used() const;
    void keep_if_better(StockPlan plan);
    [[nodiscard]] bool proved() const;
    [[nodiscard]] bool item_rows_are_equal() const;
    [[nodiscard]] double scaled(Amount amount, std::size_t goal) const;

    const StockProblem& problem_;
    ColumnPool& pool_;
    std::size_t goal_;
    StockPlan& best_;
    const SearchLimits& limits_;
    Master master_;
    StockLimits stock_limits_;      ///< that the bound holds for
    Amount bound_ = 0;              ///< of the first goal within them
    std::size_t pool_first_ = 0;    ///< master's column of the pool's first
    std::size_t pool_added_ = 0;    ///< how many of the pool's the master has
    std::vector<Amount> most_each_; ///< by goal: the highest price of a stock; scales the master
    Amount step_ = 1;               ///< of the goal: all prices are multiples
    Amount scale_ = 1;              ///< whole prices are in units of 1/scale
    std::vector<Amount> prices_;    ///< of items, by the last linear programme
    std::vector<double> relaxed_stocks_; ///< how many the linear programme of the whole uses
    std::minstd_rand random_;
    std::minstd_rand fit_random_;
    int dives_ = 0;
};

} // namespace libsplice
