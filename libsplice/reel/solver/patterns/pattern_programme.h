// The linear programme over the patterns of a pool: what is asked, and what it answers.
#pragma once

#include "libsplice/reel/solver/first_fit.h"
#include "libsplice/reel/solver/patterns/column_pool.h"
#include "libsplice/reel/solver/patterns/goal_units.h"
#include "libsplice/reel/solver/patterns/master.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace libsplice {

/// How many of each stock are used.
struct StockLimits {
    std::vector<std::int64_t> lowest; ///< by stock; empty: none need be used
    std::vector<std::int64_t> highest;
};

/// What is asked: to cut what remains, with so many of each stock.
struct PatternQuestion {
    Remaining remaining; ///< patterns that hold more than this are left out
    StockLimits stocks;
    Goals room{}; ///< by goal before the one that is sought: what may be spent
};

/// Everything, with all stock there is and no more spent in earlier goals than the value says.
[[nodiscard]] PatternQuestion whole_question(const StockProblem& problem, const Goals& value);

/// How often each pattern is cut, not in whole numbers.
struct PatternAnswer {
    double cost = 0.0;           ///< of the goal, scaled
    std::vector<double> missing; ///< by item: pieces for which there is no pattern
    std::vector<double> loose;   ///< by item: had in its own length
    std::vector<double> times;   ///< by column of the pool
};

/// A model with a row for each item, stock and earlier goal, and a column for each pattern.
class PatternProgramme {
  public:
    /// All outlive this.
    PatternProgramme(const StockProblem& problem, const ColumnPool& pool, const GoalUnits& units);

    void ask(const PatternQuestion& question);
    /// Takes in the patterns that the pool has won since.
    void add_new_columns();

    /// Nothing where there is no solution or numbers fail.
    [[nodiscard]] std::optional<PatternAnswer> solve();
    /// The same in whole numbers, with no piece missing.
    [[nodiscard]] std::optional<PatternAnswer> solve_whole(const Master::WholeSearch& search);

    // Of the last solution, in whole units.
    [[nodiscard]] Amount price_of_item(std::size_t item) const;
    [[nodiscard]] Amount price_of_stock(std::size_t stock) const;
    /// By goal: what a unit of it weighs, the one that is sought and those that must not get worse.
    [[nodiscard]] Goals weights() const;

  private:
    void add_item_columns();
    [[nodiscard]] std::size_t stock_row(std::size_t stock) const;
    [[nodiscard]] std::size_t goal_row(std::size_t goal) const;
    [[nodiscard]] PatternAnswer answer(double cost, std::span<const double> values) const;

    const StockProblem& problem_;
    const ColumnPool& pool_;
    const GoalUnits& units_;
    Master master_;
    std::size_t added_ = 0; ///< how many of the pool's columns the master has
};

/// How often the whole column can still be cut.
[[nodiscard]] std::int64_t room_for(const Remaining& remaining, const Column& column);

/// How many of each stock an answer uses.
[[nodiscard]] std::vector<double> stocks_used(const StockProblem& problem, const ColumnPool& pool,
                                              const PatternAnswer& answer);

} // namespace libsplice
