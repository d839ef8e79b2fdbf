// A dive: patterns of the linear programme are fixed one after the other, and what remains is
// planned anew.
#pragma once

#include "libsplice/reel/solver/best_plan.h"
#include "libsplice/reel/solver/patterns/column_generation.h"
#include "libsplice/reel/solver/patterns/goal_units.h"
#include "libsplice/reel/solver/patterns/pattern_programme.h"
#include "libsplice/reel/solver/search/part_plan.h"

#include <cstdint>
#include <optional>
#include <random>
#include <vector>

namespace libsplice {

/// What dives work on. All outlive them.
struct DiveTools {
    const StockProblem& problem;
    const ColumnPool& pool;
    const GoalUnits& units;
    PatternProgramme& programme;
    ColumnGeneration& generation;
    const BestPlan& best;
    const SearchLimits& limits;
};

/// One dive with so many of each stock. The first takes what the programme uses most; later ones
/// take one of the few that it uses most, by chance. The plan that it ends in, not priced, or
/// nothing where a piece is left over.
[[nodiscard]] std::optional<StockPlan> dive(const DiveTools& tools,
                                            std::vector<std::int64_t> stocks, bool first,
                                            std::minstd_rand& random);

} // namespace libsplice
