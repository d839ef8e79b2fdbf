// From the first plan to the best: what can be placed, then goal after goal.
#include "libsplice/reel/solver/exhaustive.h"
#include "libsplice/reel/solver/first_fit.h"
#include "libsplice/reel/solver/fit/close_fit.h"
#include "libsplice/reel/solver/fit/close_search.h"
#include "libsplice/reel/solver/improve.h"
#include "libsplice/reel/solver/patterns/column_pool.h"
#include "libsplice/reel/solver/search/goal_search.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace libsplice {

namespace {

constexpr std::int64_t most_exhaustive_pieces = 40;
constexpr std::int64_t most_exhaustive_steps = 200'000;
constexpr std::size_t few_items = 100;
constexpr int most_dives_if_few = 20;
constexpr int most_dives_at_first = 6;
constexpr int most_dives_first = 400;
constexpr int most_dives_before_branching = 30;
constexpr int most_dives_later = 3;
constexpr int most_branches = 300;
constexpr std::int64_t most_fitting_at_first = 200'000'000;
constexpr std::int64_t most_fitting_between = 300'000'000;
constexpr std::int64_t most_fitting = 20'000'000'000;
constexpr int most_turns_to_place = 2'000;
constexpr std::int64_t most_fitting_to_place = 3'000'000'000;
constexpr int most_dives_to_place = 20;

StockPlan better_first_fit(const StockProblem& problem) {
    StockPlan a = first_fit(problem, everything(problem), FirstFitRule::least_per_length);
    StockPlan b = first_fit(problem, everything(problem), FirstFitRule::least_per_piece);
    if (a.places_all() != b.places_all()) {
        return a.places_all() ? a : b;
    }
    return b.value < a.value ? b : a;
}

std::int64_t pieces_of(const StockProblem& problem) {
    return std::accumulate(
        problem.items.begin(), problem.items.end(), std::int64_t{0},
        [](std::int64_t sum, const StockItem& item) { return sum + item.count; });
}

/// Plans parts anew, larger ones where small ones bring nothing.
void improve(const StockProblem& problem, std::size_t goal, StockPlan& best,
             const SearchLimits& limits) {
    if (pieces_of(problem) <= most_exhaustive_pieces) {
        return; // the whole is no larger than a part
    }
    std::minstd_rand random;
    constexpr int most_in_vain = 25;
    constexpr std::size_t fewest = 30;
    const auto most =
        std::min<std::size_t>(90, static_cast<std::size_t>(pieces_of(problem)) * 2 / 3);
    std::size_t pieces = fewest;
    int in_vain = 0;
    while (in_vain < most_in_vain && !limits.reached() &&
           !(goal == 0 && best.value[0] <= best.bound)) {
        const bool better = improve_part(problem, goal, best, limits, pieces, random);
        in_vain = better ? 0 : in_vain + 1;
        pieces = better ? fewest : std::min(pieces + 2, most);
        if (better && limits.on_progress) {
            limits.on_progress({best.bound, best.value[0]});
        }
    }
}

void search_goals(const StockProblem& problem, StockPlan& best, const SearchLimits& limits) {
    ColumnPool pool(problem);
    for (const Pattern& pattern : best.patterns) {
        pool.add(pattern.stock, pattern.takes);
    }
    for (std::size_t goal = 0; goal < problem.goals && !limits.reached(); ++goal) {
        GoalSearch search(problem, pool, goal, best, limits);
        if (goal == 0 && can_fit_closely(problem)) {
            search.fit_closely(most_fitting_at_first);
        }
        search.run(goal > 0                            ? 1
                   : problem.items.size() <= few_items ? most_dives_if_few
                                                       : most_dives_at_first);
        improve(problem, goal, best, limits);
        if (goal == 0 && can_fit_closely(problem)) {
            search.fit_closely(most_fitting_between);
        }
        search.run(goal == 0 ? most_dives_before_branching : most_dives_later);
        if (goal == 0 && best.value[0] > best.bound && problem.stocks.size() > 1) {
            search.branch(most_branches);
        }
        if (goal == 0 && can_fit_closely(problem)) {
            search.fit_closely(most_fitting);
        }
        search.run(goal == 0 ? most_dives_first : most_dives_later);
        for (const Pattern& pattern : best.patterns) {
            pool.add(pattern.stock, pattern.takes);
        }
    }
    best.proved = best.value[0] <= best.bound;
}

/// The problem in which rope that is not placed is what is to be made little.
StockProblem placing(const StockProblem& problem) {
    StockProblem placing = problem;
    placing.goals = 1;
    for (StockItem& item : placing.items) {
        item.loose = Goals{item.loose ? 0 : item.length};
    }
    for (Stock& stock : placing.stocks) {
        stock.each = {};
        stock.waste = {};
    }
    return placing;
}

/// A plan that places every piece, from all the stock that there is.
std::optional<StockPlan> place_all(const StockProblem& problem, const SearchLimits& limits) {
    std::minstd_rand random;
    CloseFit fit(problem, limits);
    const std::vector<std::int64_t> stocks = everything(problem).stocks;
    for (int turn = 0;
         turn < most_turns_to_place && fit.work() < most_fitting_to_place && !limits.reached();
         ++turn) {
        if (auto plan = fit.turn(stocks, random)) {
            return plan;
        }
    }
    return std::nullopt;
}

/// Places as much rope as can be. The bound of the plan is of what is placed.
StockPlan place_most(const StockProblem& problem, const SearchLimits& limits) {
    const StockProblem question = placing(problem);
    StockPlan plan = better_first_fit(question);
    plan.bound = 0;
    ColumnPool pool(question);
    for (const Pattern& pattern : plan.patterns) {
        pool.add(pattern.stock, pattern.takes);
    }
    GoalSearch search(question, pool, 0, plan, limits);
    search.run(3);
    improve(question, 0, plan, limits);
    search.run(most_dives_to_place);
    plan.proved = plan.value[0] <= plan.bound;
    for (std::size_t i = 0; i < problem.items.size(); ++i) {
        if (!problem.items[i].loose) {
            plan.unplaced[i] = std::exchange(plan.loose[i], 0);
        }
    }
    plan.value = price_of(problem, plan);
    return plan;
}

/// The goals of a problem of which the given plan places every piece.
StockPlan meet_goals(const StockProblem& problem, StockPlan first, const SearchLimits& limits) {
    if (pieces_of(problem) <= most_exhaustive_pieces) {
        if (auto plan = try_every_plan(problem, limits, most_exhaustive_steps)) {
            return *std::move(plan);
        }
    }
    first.bound = 0;
    search_goals(problem, first, limits);
    return first;
}

} // namespace

StockPlan solve(const StockProblem& problem, const SearchLimits& limits) {
    if (problem.items.empty()) {
        return {.patterns = {}, .loose = {}, .unplaced = {}, .proved = true};
    }
    StockPlan first = better_first_fit(problem);
    if (problem.stocks.empty()) { // each piece is had loose or not at all
        first.bound = first.value[0];
        first.proved = true;
        return first;
    }
    if (first.places_all()) {
        return meet_goals(problem, std::move(first), limits);
    }
    if (auto plan = place_all(problem, limits)) {
        return meet_goals(problem, *std::move(plan), limits);
    }
    first = place_most(problem, limits);
    const bool most_placed = first.proved;
    StockProblem placed = problem;
    for (std::size_t i = 0; i < placed.items.size(); ++i) {
        placed.items[i].count -= first.unplaced[i];
    }
    const std::vector<std::int64_t> unplaced = first.unplaced;
    first.unplaced.assign(unplaced.size(), 0);
    StockPlan plan = meet_goals(placed, std::move(first), limits);
    plan.unplaced = unplaced;
    plan.proved = plan.proved && most_placed;
    return plan;
}

} // namespace libsplice
