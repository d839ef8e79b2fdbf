// First the programme of everything is solved, for a bound and for patterns; then dives try for a
// plan, now and then with a search in whole numbers over all patterns that they have found.
#include "libsplice/reel/solver/search/goal_search.h"

#include "libsplice/reel/solver/fit/close_search.h"
#include "libsplice/reel/solver/fit/stock_numbers.h"
#include "libsplice/reel/solver/patterns/pattern_bound.h"
#include "libsplice/reel/solver/search/branch_by_stock.h"
#include "libsplice/reel/solver/search/whole_patterns.h"

#include <optional>
#include <utility>

namespace libsplice {

GoalSearch::GoalSearch(const StockProblem& problem, ColumnPool& pool, std::size_t goal,
                       StockPlan& plan, const SearchLimits& limits)
    : problem_(problem),
      pool_(pool),
      limits_(limits),
      best_(problem, goal, plan, limits),
      units_(units_of(problem, goal, pool.unit())),
      programme_(problem, pool, units_),
      generation_(problem, pool, units_, programme_, limits),
      tools_{problem, pool, units_, programme_, generation_, best_, limits} {}

void GoalSearch::run(int most_dives) {
    const PatternQuestion whole = whole_question(problem_, best_.plan().value);
    constexpr int until_done = 100'000;
    if (best_.goal() == 0) {
        best_.raise_bound(bound_by_length(problem_, pool_, units_, whole.stocks));
        best_.raise_bound(generation_.raise(whole, best_.bound(), best_, until_done));
    } else {
        generation_.complete(whole, until_done);
    }
    if (const auto answer = limits_.reached() ? std::nullopt : programme_.solve()) {
        relaxed_ = stocks_used(problem_, pool_, *answer);
    }
    if (auto plan = whole_patterns(tools_)) {
        best_.offer(*std::move(plan));
    }
    while (dives_ < most_dives && !best_.ended()) {
        dive_once();
        ++dives_;
        if ((dives_ & (dives_ - 1)) != 0) { // whole patterns ever more rarely
            continue;
        }
        if (auto plan = whole_patterns(tools_)) {
            best_.offer(*std::move(plan));
        }
    }
}

void GoalSearch::dive_once() {
    std::vector<std::int64_t> stocks = everything(problem_).stocks;
    if (best_.goal() == 0 && dives_ % 2 == 1 && !relaxed_.empty()) {
        auto fewer = draw_under(problem_, relaxed_, best_.value(), random_);
        if (!fewer.empty()) {
            stocks = std::move(fewer);
        }
    }
    if (auto plan = dive(tools_, std::move(stocks), dives_ == 0, random_)) {
        best_.offer(*std::move(plan));
    }
}

void GoalSearch::fit_closely(std::int64_t most_work) {
    const StockLimits all = whole_question(problem_, {}).stocks;
    best_.raise_bound(bound_by_length(problem_, pool_, units_, all));
    search_closely(problem_, relaxed_, best_, most_work, limits_, fit_random_);
}

void GoalSearch::branch(int most_branches) {
    branch_by_stock(tools_, best_, most_branches, random_);
}

} // namespace libsplice
