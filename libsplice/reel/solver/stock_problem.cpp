// What patterns and plans cost.
#include "libsplice/reel/solver/stock_problem.h"

#include <algorithm>

namespace libsplice {

namespace {

/// The pattern's pieces, each with the cut behind it.
Nanometres fill_of(const StockProblem& problem, const Pattern& pattern) {
    Nanometres fill = 0;
    for (const Take& take : pattern.takes) {
        fill += (problem.items[take.item].length + problem.cut_loss) * take.count;
    }
    return fill;
}

} // namespace

Nanometres left_of(const StockProblem& problem, const Pattern& pattern) {
    return std::max<Nanometres>(0,
                                problem.stocks[pattern.stock].length - fill_of(problem, pattern));
}

Nanometres cut_loss_of(const StockProblem& problem, const Pattern& pattern) {
    Nanometres pieces = 0;
    for (const Take& take : pattern.takes) {
        pieces += problem.items[take.item].length * take.count;
    }
    return problem.stocks[pattern.stock].length - left_of(problem, pattern) - pieces;
}

Goals price_of(const StockProblem& problem, const Pattern& pattern) {
    const Stock& stock = problem.stocks[pattern.stock];
    const Nanometres left = left_of(problem, pattern);
    Goals price = stock.each;
    for (std::size_t goal = 0; goal < most_goals; ++goal) {
        if (stock.waste[goal] && left < stock.usable) {
            price[goal] += left;
        }
    }
    return price;
}

Goals price_of(const StockProblem& problem, const StockPlan& plan) {
    Goals sum{};
    for (const Pattern& pattern : plan.patterns) {
        const Goals price = price_of(problem, pattern);
        for (std::size_t goal = 0; goal < most_goals; ++goal) {
            sum[goal] += price[goal] * pattern.times;
        }
    }
    for (std::size_t item = 0; item < plan.loose.size(); ++item) {
        for (std::size_t goal = 0; plan.loose[item] > 0 && goal < most_goals; ++goal) {
            sum[goal] += (*problem.items[item].loose)[goal] * plan.loose[item];
        }
    }
    return sum;
}

} // namespace libsplice
