// A good plan made better: a part of it is taken out and planned anew.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <random>

namespace libsplice {

/// Takes a few stocks out of the plan, those with most left over more often, and plans their pieces
/// anew as a small problem; what is no worse in `goal` and all before it is kept. Returns whether
/// the goal became better.
[[nodiscard]] bool improve_part(const StockProblem& problem, std::size_t goal, StockPlan& plan,
                                const SearchLimits& limits, std::size_t pieces,
                                std::minstd_rand& random);

} // namespace libsplice
