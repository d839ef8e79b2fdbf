// Column generation: patterns are added to the linear programme until none is missing.
#pragma once

#include "libsplice/reel/solver/best_plan.h"
#include "libsplice/reel/solver/patterns/pattern_programme.h"

#include <vector>

namespace libsplice {

/// Adds patterns to a pool and its programme.
class ColumnGeneration {
  public:
    /// All outlive this.
    ColumnGeneration(const StockProblem& problem, ColumnPool& pool, const GoalUnits& units,
                     PatternProgramme& programme, const SearchLimits& limits)
        : problem_(problem), pool_(pool), units_(units), programme_(programme), limits_(limits) {}

    /// Asks the question and adds patterns until none would lower its cost, or for so many rounds.
    void complete(const PatternQuestion& question, int most_rounds);

    /// The same for the first goal and all pieces. The result is a bound of the plans within the
    /// question's stock limits, no lower than the one that is given. It ends where the bound meets
    /// the best plan or the cost of the programme.
    [[nodiscard]] Amount raise(const PatternQuestion& question, Amount bound, const BestPlan& best,
                               int most_rounds);

  private:
    /// What one round of pricing found.
    struct Round {
        std::vector<Amount> prices; ///< by item
        std::vector<Amount> over;   ///< by stock: no pattern brings more than this over its cost
        bool added = false;
    };
    [[nodiscard]] Round add_patterns(const Remaining& remaining, bool exact);
    [[nodiscard]] std::vector<Amount> prices(const Remaining& remaining) const;

    const StockProblem& problem_;
    ColumnPool& pool_;
    const GoalUnits& units_;
    PatternProgramme& programme_;
    const SearchLimits& limits_;
};

} // namespace libsplice
