// Plans from scratch, each from whole numbers of stock that cost less than the best plan.
#include "libsplice/reel/solver/close_fit.h"
#include "libsplice/reel/solver/goal_search.h"
#include "libsplice/reel/solver/stock_numbers.h"

#include <vector>

namespace libsplice {

namespace {

/// How many of each stock a plan uses.
std::vector<double> numbers_in(const StockProblem& problem, const StockPlan& plan) {
    std::vector<double> numbers(problem.stocks.size(), 0.0);
    for (const Pattern& pattern : plan.patterns) {
        numbers[pattern.stock] += static_cast<double>(pattern.times);
    }
    return numbers;
}

} // namespace

void GoalSearch::fit_closely(std::int64_t most_work) {
    constexpr std::int64_t work_of_a_turn = 100'000;
    bound_ = best_.bound;
    raise_bound_by_length();
    best_.bound = bound_;
    CloseFit fit(problem_, limits_);
    constexpr std::int64_t fewest_turns = 24; // of large problems, where each takes long
    constexpr std::int64_t most_work_of_few = 20;
    constexpr int most_in_vain = 50; // no numbers seem to cost less than the best plan
    int in_vain = 0;
    std::int64_t turns = 0;
    const auto may_go_on = [&] {
        const std::int64_t work = fit.work() + turns * work_of_a_turn;
        return work < most_work || (turns < fewest_turns && work < most_work_of_few * most_work);
    };
    while (!proved() && !limits_.reached() && may_go_on()) {
        const DrawRule rule = turns % 4 == 3 ? DrawRule::dearest : DrawRule::cheapest;
        ++turns;
        const bool by_best = relaxed_stocks_.empty() || turns % 2 == 0;
        const auto about = by_best ? numbers_in(problem_, best_) : relaxed_stocks_;
        const auto stocks =
            draw_stock_numbers(problem_, {about, best_.value[0], rule}, fit_random_);
        if (stocks.empty()) {
            if (++in_vain == most_in_vain) {
                return;
            }
            continue;
        }
        in_vain = 0;
        if (auto plan = fit.turn(stocks, fit_random_)) {
            keep_if_better(*std::move(plan));
        }
    }
}

} // namespace libsplice
