// Small problems: every plan there is, all goals at once.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <optional>

namespace libsplice {

/// The best plan by all goals in order, or nothing where a plan needs more than `most_steps` to be
/// found or no plan places all pieces. What is found is proved.
[[nodiscard]] std::optional<StockPlan>
try_every_plan(const StockProblem& problem, const SearchLimits& limits, std::int64_t most_steps);

} // namespace libsplice
