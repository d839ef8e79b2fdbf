// Compares plans goal by goal, up to the one that is sought.
#include "libsplice/reel/solver/best_plan.h"

#include <algorithm>
#include <utility>

namespace libsplice {

void BestPlan::offer(StockPlan plan) {
    plan.value = price_of(problem_, plan);
    const auto end = static_cast<std::ptrdiff_t>(goal_) + 1;
    if (std::lexicographical_compare(plan.value.begin(), plan.value.begin() + end,
                                     plan_.value.begin(), plan_.value.begin() + end)) {
        plan.bound = plan_.bound;
        plan_ = std::move(plan);
        report(plan_.bound);
    }
}

void BestPlan::raise_bound(Amount bound) {
    plan_.bound = std::max(plan_.bound, bound);
}

void BestPlan::report(Amount bound) const {
    if (limits_.on_progress) {
        limits_.on_progress(
            {std::max(plan_.bound, std::min(bound, plan_.value[0])), plan_.value[0]});
    }
}

} // namespace libsplice
