// Solves one rope as often as its lots and its minimum orders ask for, and keeps the best plan.
#include "libsplice/reel/rope_plan.h"

#include "libsplice/reel/cut_list.h"
#include "libsplice/reel/solver/first_fit.h"

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

Nanometres not_placed(const StockProblem& problem, const StockPlan& plan) {
    Nanometres sum = 0;
    for (std::size_t item = 0; item < plan.unplaced.size(); ++item) {
        sum += problem.items[item].length * plan.unplaced[item];
    }
    return sum;
}

/// A plan with the question it answers.
struct Answer {
    RopeProblem asked;
    StockPlan plan;
};

/// Solves it again without the groups that are placed in part: half a pair is of no use.
void drop_torn_groups(Answer& answer, const SearchLimits& limits) {
    StockProblem whole = answer.asked.problem;
    bool torn = false;
    for (const auto& items : answer.asked.groups) {
        const auto is_placed = [&](std::size_t item) {
            return answer.plan.unplaced[item] < answer.asked.problem.items[item].count;
        };
        const auto is_missed = [&](std::size_t item) {
            return answer.plan.unplaced[item] > 0;
        };
        if (std::ranges::any_of(items, is_placed) && std::ranges::any_of(items, is_missed)) {
            torn = true;
            for (const std::size_t item : items) {
                whole.items[item].count = 0;
            }
        }
    }
    if (!torn) {
        return;
    }
    answer.plan = solve(whole, limits);
    answer.plan.proved = false;
    for (std::size_t item = 0; item < whole.items.size(); ++item) {
        answer.plan.unplaced[item] +=
            answer.asked.problem.items[item].count - whole.items[item].count;
    }
}

bool is_better(const Answer& one, const Answer& other) {
    return std::pair(not_placed(one.asked.problem, one.plan), one.plan.value) <
           std::pair(not_placed(other.asked.problem, other.plan), other.plan.value);
}

Answer answer(const ReelQuestion& question, const RopeShare& share, const LeftOut& left_out,
              const SearchLimits& limits) {
    const auto with_lots = [&](const LotChoice& choice) {
        return Answer{rope_problem(question, share, left_out, choice), {}};
    };
    Answer best = with_lots({});
    const std::size_t groups = best.asked.groups.size();
    if (groups == 0 || share.stock.empty()) { // nothing has a lot
        best.plan = solve(best.asked.problem, limits);
        return best;
    }
    // No plan that keeps lots together is cheaper than one that need not.
    Answer free{rope_problem(question, share, left_out, std::nullopt), {}};
    free.plan = solve(free.asked.problem, limits);
    best.plan = solve(best.asked.problem, limits);
    const auto proved = [&] {
        return best.plan.places_all() && best.plan.value[0] <= free.plan.bound;
    };
    // One group after the other is given every lot that could hold it.
    constexpr int most_tries = 60;
    LotChoice choice(groups, 0);
    int tries = 0;
    for (std::size_t group = 0; group < groups; ++group) {
        LotChoice next = choice;
        while (!proved() && !limits.reached() && ++tries <= most_tries) {
            ++next[group];
            Answer other = with_lots(next);
            if (other.asked.items_without_lot.size() > best.asked.items_without_lot.size()) {
                break; // there are no more
            }
            other.plan = solve(other.asked.problem, limits);
            if (is_better(other, best)) {
                best = std::move(other);
                choice = next;
            }
        }
    }
    if (best.plan.places_all()) {
        best.plan.bound = free.plan.bound;
    }
    best.plan.proved = proved(); // else other lots might have done better
    if (!best.plan.places_all()) {
        drop_torn_groups(best, limits);
    }
    return best;
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
    const StockProblem& problem = found.asked.problem;
    ReelPlan plan = cut_list(question, share, found.asked, found.plan);
    plan.proved = found.plan.proved && plan.quality.value <= plan.quality.bound;
    plan.cut_into = cut_into(problem, found.plan) + plan.bought;
    const StockPlan fit = first_fit(problem, everything(problem), FirstFitRule::least_per_length);
    plan.first_fit = cut_into(problem, fit) + not_placed(problem, fit) - plan.unplaced_length;
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
    if (other.unplaced.empty() && other.bought <= plan.bought &&
        other.quality.value < plan.quality.value) {
        other.quality.bound = std::min(plan.quality.bound, other.quality.bound);
        other.proved = other.quality.value <= other.quality.bound;
        return other;
    }
    return plan;
}

} // namespace libsplice
