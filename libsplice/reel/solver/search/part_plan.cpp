// Takes every pattern and loose piece off what remains, and adds up what it costs.
#include "libsplice/reel/solver/search/part_plan.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace libsplice {

PartPlan::PartPlan(const StockProblem& problem, std::vector<std::int64_t> stocks)
    : problem_(problem), remaining_(everything(problem)) {
    remaining_.stocks = std::move(stocks);
    plan_.loose.assign(problem.items.size(), 0);
    plan_.unplaced.assign(problem.items.size(), 0);
}

std::int64_t PartPlan::pieces_left() const {
    return std::accumulate(remaining_.items.begin(), remaining_.items.end(), std::int64_t{0});
}

void PartPlan::spend(const Goals& price, std::int64_t times) {
    for (std::size_t g = 0; g < most_goals; ++g) {
        spent_[g] += price[g] * times;
    }
}

bool PartPlan::cut(const Column& column, std::int64_t times) {
    times = std::min(times, remaining_.stocks[column.stock]);
    while (times > 0) {
        Pattern pattern{column.stock, {}, times};
        for (const Take& take : column.takes) {
            const auto count = static_cast<std::int32_t>(
                std::min<std::int64_t>(take.count, remaining_.items[take.item]));
            if (count > 0) {
                pattern.takes.push_back({take.item, count});
                pattern.times = std::min(pattern.times, remaining_.items[take.item] / count);
            }
        }
        if (pattern.takes.empty()) {
            return false;
        }
        remaining_.stocks[pattern.stock] -= pattern.times;
        for (const Take& take : pattern.takes) {
            remaining_.items[take.item] -= take.count * pattern.times;
        }
        spend(price_of(problem_, pattern), pattern.times);
        times -= pattern.times;
        plan_.patterns.push_back(std::move(pattern));
    }
    return true;
}

std::int64_t PartPlan::take_loose(std::size_t item, std::int64_t count) {
    count = std::min(count, remaining_.items[item]);
    if (count <= 0) {
        return 0;
    }
    remaining_.items[item] -= count;
    plan_.loose[item] += count;
    spend(*problem_.items[item].loose, count);
    return count;
}

std::optional<StockPlan> PartPlan::finished() const {
    StockPlan whole = plan_;
    StockPlan rest = first_fit(problem_, remaining_, FirstFitRule::least_per_piece);
    if (!rest.places_all()) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        whole.loose[i] += rest.loose[i];
    }
    std::ranges::move(rest.patterns, std::back_inserter(whole.patterns));
    return whole;
}

} // namespace libsplice
