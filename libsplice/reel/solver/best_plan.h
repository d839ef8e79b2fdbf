// The best plan so far, and what no plan can be under.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>

namespace libsplice {

/// Keeps the best plan in one goal among those that are not worse in the goals before it. The bound
/// is of the first goal.
class BestPlan {
  public:
    /// `plan` places every piece; it is replaced by whatever is better. All outlive this.
    BestPlan(const StockProblem& problem, std::size_t goal, StockPlan& plan,
             const SearchLimits& limits)
        : problem_(problem), goal_(goal), plan_(plan), limits_(limits) {}

    [[nodiscard]] const StockPlan& plan() const { return plan_; }
    [[nodiscard]] std::size_t goal() const { return goal_; }
    /// What it costs in the goal.
    [[nodiscard]] Amount value() const { return plan_.value[goal_]; }
    [[nodiscard]] Amount bound() const { return plan_.bound; }

    /// Whether nothing better can be had where no plan is under this bound of the first goal.
    [[nodiscard]] bool is_met_by(Amount bound) const { return goal_ == 0 && value() <= bound; }
    [[nodiscard]] bool proved() const { return is_met_by(plan_.bound); }
    /// Whether to search on: neither proved nor at a limit.
    [[nodiscard]] bool ended() const { return proved() || limits_.reached(); }

    /// Takes a plan that places every piece, if it is better; its value is worked out here.
    void offer(StockPlan plan);
    /// Takes a bound of the first goal, if it is higher.
    void raise_bound(Amount bound);
    /// Reports how far the search has come, with a bound that is on its way up.
    void report(Amount bound) const;

  private:
    const StockProblem& problem_;
    std::size_t goal_;
    StockPlan& plan_;
    const SearchLimits& limits_;
};

} // namespace libsplice
