// One goal made small, by every way of searching that there is, in turns.
#pragma once

#include "libsplice/reel/solver/best_plan.h"
#include "libsplice/reel/solver/patterns/column_generation.h"
#include "libsplice/reel/solver/patterns/goal_units.h"
#include "libsplice/reel/solver/patterns/pattern_programme.h"
#include "libsplice/reel/solver/search/dive.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <random>
#include <vector>

namespace libsplice {

/// Searches for a plan that is better in one goal and not worse in those before it. The plan it is
/// given places every piece.
class GoalSearch {
  public:
    /// All outlive this.
    GoalSearch(const StockProblem& problem, ColumnPool& pool, std::size_t goal, StockPlan& plan,
               const SearchLimits& limits);

    /// Column generation, whole patterns and dives, until the goal is proved, `most_dives` are done
    /// in all or a limit is reached.
    void run(int most_dives);

    /// Close fitting, until the goal is proved, so much work is done or a limit is reached. Expects
    /// the first goal of a problem that can be fitted closely.
    void fit_closely(std::int64_t most_work);

    /// Branching by the numbers of stock. Expects the first goal.
    void branch(int most_branches);

  private:
    void dive_once();

    const StockProblem& problem_;
    const ColumnPool& pool_;
    const SearchLimits& limits_;
    BestPlan best_;
    GoalUnits units_;
    PatternProgramme programme_;
    ColumnGeneration generation_;
    DiveTools tools_;
    std::vector<double> relaxed_; ///< by stock: how many the programme of everything uses
    std::minstd_rand random_;
    std::minstd_rand fit_random_;
    int dives_ = 0;
};

} // namespace libsplice
