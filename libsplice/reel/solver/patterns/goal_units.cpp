// Finds the largest step that divides every price, and the dearest price of each goal.
#include "libsplice/reel/solver/patterns/goal_units.h"

#include <algorithm>
#include <numeric>

namespace libsplice {

namespace {

Amount highest_price(const Stock& stock, std::size_t goal) {
    return stock.each[goal] + (stock.waste[goal] ? std::min(stock.length, stock.usable) : 0);
}

} // namespace

GoalUnits units_of(const StockProblem& problem, std::size_t goal, Amount size_unit) {
    GoalUnits units;
    units.goal = goal;
    Amount step = 0;
    for (const Stock& stock : problem.stocks) {
        for (std::size_t g = 0; g <= goal; ++g) {
            units.highest[g] = std::max(units.highest[g], highest_price(stock, g));
            units.counts_waste = units.counts_waste || stock.waste[g];
        }
        step = std::gcd(step, stock.each[goal]);
        if (stock.waste[goal]) { // what is left is a sum of lengths and sizes
            step = std::gcd(step, std::gcd(stock.length, size_unit));
        }
    }
    for (const StockItem& item : problem.items) {
        if (item.loose) {
            step = std::gcd(step, (*item.loose)[goal]);
            units.highest[goal] = std::max(units.highest[goal], (*item.loose)[goal]);
        }
    }
    units.step = std::max<Amount>(1, step);
    constexpr Amount fine = Amount{1} << 36U;
    units.scale = std::max<Amount>(1, fine / units.highest[goal]);
    return units;
}

} // namespace libsplice
