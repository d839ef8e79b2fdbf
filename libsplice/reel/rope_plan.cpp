#include "libsplice/reel/rope_plan.h"

#include "libsplice/reel/cut_list.h"
#include "libsplice/reel/first_fit.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace libsplice {

namespace {

Nanometres cut_into(const StockProblem& problem, const StockPlan& plan) {
    Nanometres sum = 0;
    for (const Pattern& pattern : plan.patterns) {
        sum += problem.stocks[pattern.stock].length * pattern.times;
    }
    for (std::size_t i = 0; i < plan.loose.size(); ++i) {
        sum += problem.items[i].length * plan.loose[i];
    }
    return sum;
}

/// A plan with the question it answers.
struct Answer {
    RopeProblem asked;
    StockPlan plan;
};

Answer answer(const ReelQuestion& question, const RopeShare& share, const LeftOut& left_out,
              const SearchLimits& limits) {
    Answer free{rope_problem(question, share, left_out, false), {}};
    Answer kept{rope_problem(question, share, left_out, true), {}};
    if (!kept.asked.one_lot) {
        kept.plan = solve(kept.asked.problem, limits);
        return kept;
    }
    // No plan that keeps lots together is cheaper than one that need not.
    free.plan = solve(free.asked.problem, limits);
    kept.plan = solve(kept.asked.problem, limits);
    if (kept.plan.places_all()) {
        kept.plan.bound = free.plan.bound;
        kept.plan.proved = kept.plan.value[0] <= free.plan.bound;
    } else {
        kept.plan.proved = false; // other lots might have placed more
    }
    return kept;
}

/// Rows of which less was ordered than must be.
std::vector<std::size_t> under_minimum(const ReelPlan& plan) {
    std::vector<std::size_t> rows;
    for (const ReelCut& cut : plan.cuts) {
        if (cut.pieces.empty()) {
            rows.push_back(cut.stock);
        }
    }
    return rows;
}

ReelPlan plan_without(const ReelQuestion& question, const RopeShare& share, const LeftOut& left_out,
                      const SearchLimits& limits) {
    const Answer found = answer(question, share, left_out, limits);
    ReelPlan plan = cut_list(question, share, found.asked, found.plan);
    plan.bound = found.plan.bound;
    plan.proved = found.plan.proved && plan.value <= plan.bound;
    plan.cut_into = cut_into(found.asked.problem, found.plan);
    const StockPlan fit = first_fit(found.asked.problem, everything(found.asked.problem),
                                    FirstFitRule::least_per_length);
    plan.first_fit = fit.places_all() ? cut_into(found.asked.problem, fit) : plan.cut_into;
    return plan;
}

} // namespace

ReelPlan plan_rope(const ReelQuestion& question, const RopeShare& share,
                   const SearchLimits& limits) {
    LeftOut left_out(question.stock.size(), false);
    ReelPlan plan = plan_without(question, share, left_out, limits);
    const auto padded = under_minimum(plan);
    if (padded.empty() || !plan.unplaced.empty()) {
        return plan;
    }
    // Perhaps it is better not to order there at all.
    for (const std::size_t row : padded) {
        left_out[row] = true;
    }
    ReelPlan other = plan_without(question, share, left_out, limits);
    if (other.unplaced.empty() && other.value < plan.value) {
        other.bound = std::min(plan.bound, other.bound);
        other.proved = other.value <= other.bound;
        return other;
    }
    return plan;
}

} // namespace libsplice
