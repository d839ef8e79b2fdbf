// Every plan of a tiny problem, one piece after the other: slow, and written apart from the search.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <optional>

namespace libsplice::testing {

/// The best goals of any plan that places every piece; nothing where there is no such plan.
[[nodiscard]] std::optional<Goals> best_goals(const StockProblem& problem);

} // namespace libsplice::testing
