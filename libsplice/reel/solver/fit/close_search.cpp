// Draws numbers of each stock near those of the best plan or of the linear programme, and fits the
// pieces into them.
#include "libsplice/reel/solver/fit/close_search.h"

#include "libsplice/reel/solver/fit/close_fit.h"
#include "libsplice/reel/solver/fit/stock_numbers.h"

#include <gsl/assert>

#include <algorithm>
#include <utility>
#include <vector>

namespace libsplice {

bool can_fit_closely(const StockProblem& problem) {
    return std::ranges::none_of(problem.items,
                                [](const StockItem& item) { return item.loose.has_value(); }) &&
           std::ranges::none_of(problem.stocks, [](const Stock& stock) { return stock.waste[0]; });
}

void search_closely(const StockProblem& problem, std::span<const double> relaxed, BestPlan& best,
                    std::int64_t most_work, const SearchLimits& limits, std::minstd_rand& random) {
    Expects(best.goal() == 0 && can_fit_closely(problem));
    constexpr std::int64_t work_of_a_turn = 100'000;
    constexpr std::int64_t fewest_turns = 24; // of large problems, where each takes long
    constexpr std::int64_t most_work_of_few = 20;
    constexpr int most_in_vain = 50; // no numbers seem to cost less than the best plan
    CloseFit fit(problem, limits);
    int in_vain = 0;
    std::int64_t turns = 0;
    const auto may_go_on = [&] {
        const std::int64_t work = fit.work() + turns * work_of_a_turn;
        return work < most_work || (turns < fewest_turns && work < most_work_of_few * most_work);
    };
    while (!best.ended() && may_go_on() && in_vain < most_in_vain) {
        const DrawRule rule = turns % 4 == 3 ? DrawRule::dearest : DrawRule::cheapest;
        ++turns;
        best.report(best.bound());
        const std::vector<double> planned = stocks_of(problem, best.plan());
        const bool by_best = relaxed.empty() || turns % 2 == 0;
        const auto stocks =
            draw_stock_numbers(problem, {by_best ? planned : relaxed, best.value(), rule}, random);
        if (stocks.empty()) {
            ++in_vain;
            continue;
        }
        in_vain = 0;
        if (auto plan = fit.turn(stocks, random)) {
            best.offer(*std::move(plan));
        }
    }
}

} // namespace libsplice
