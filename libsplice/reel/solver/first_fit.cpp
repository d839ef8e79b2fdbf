// Takes the stock that costs least, fills it with the longest pieces that go in, and goes on.
#include "libsplice/reel/solver/first_fit.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <utility>

namespace libsplice {

namespace {

class FirstFit {
  public:
    FirstFit(const StockProblem& problem, Remaining remaining, FirstFitRule rule)
        : problem_(problem), remaining_(std::move(remaining)), rule_(rule) {
        order_.resize(problem.items.size());
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
            return problem.items[a].length > problem.items[b].length;
        });
        plan_.loose.assign(problem.items.size(), 0);
        plan_.unplaced.assign(problem.items.size(), 0);
    }

    StockPlan run() {
        for (const std::size_t item : order_) {
            while (remaining_.items[item] > 0) {
                if (!cut_one_for(item)) {
                    auto& rest = problem_.items[item].loose ? plan_.loose : plan_.unplaced;
                    rest[item] = std::exchange(remaining_.items[item], 0);
                }
            }
        }
        plan_.value = price_of(problem_, plan_);
        return std::move(plan_);
    }

  private:
    bool cut_one_for(std::size_t longest) {
        std::optional<Pattern> best;
        double best_rate = 0.0;
        for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
            if (remaining_.stocks[s] == 0 ||
                problem_.stocks[s].length < problem_.items[longest].length ||
                !problem_.items[longest].may_come_from(s)) {
                continue;
            }
            Pattern pattern = fill(s);
            const double rate = rate_of(pattern);
            if (!best || rate < best_rate) {
                best = std::move(pattern);
                best_rate = rate;
            }
        }
        if (!best) {
            return false;
        }
        take(*std::move(best));
        return true;
    }

    [[nodiscard]] Pattern fill(std::size_t s) const {
        Pattern pattern{s, {}, remaining_.stocks[s]};
        Nanometres room = problem_.stocks[s].length + problem_.cut_loss;
        for (const std::size_t item : order_) {
            const Nanometres size = problem_.items[item].length + problem_.cut_loss;
            const std::int64_t count = problem_.items[item].may_come_from(s)
                                           ? std::min(remaining_.items[item], room / size)
                                           : 0;
            if (count > 0) {
                pattern.takes.push_back(
                    {static_cast<std::uint32_t>(item), static_cast<std::int32_t>(count)});
                pattern.times = std::min(pattern.times, remaining_.items[item] / count);
                room -= count * size;
            }
        }
        std::ranges::sort(pattern.takes, {}, &Take::item);
        return pattern;
    }

    [[nodiscard]] double rate_of(const Pattern& pattern) const {
        Nanometres length = problem_.stocks[pattern.stock].length;
        if (rule_ == FirstFitRule::least_per_piece) {
            length -= left_of(problem_, pattern);
        }
        return static_cast<double>(price_of(problem_, pattern)[0]) / static_cast<double>(length);
    }

    void take(Pattern pattern) {
        remaining_.stocks[pattern.stock] -= pattern.times;
        for (const Take& take : pattern.takes) {
            remaining_.items[take.item] -= take.count * pattern.times;
        }
        plan_.patterns.push_back(std::move(pattern));
    }

    const StockProblem& problem_;
    Remaining remaining_;
    FirstFitRule rule_;
    std::vector<std::size_t> order_; ///< items, the longest first
    StockPlan plan_;
};

} // namespace

Remaining everything(const StockProblem& problem) {
    Remaining all;
    for (const StockItem& item : problem.items) {
        all.items.push_back(item.count);
    }
    for (const Stock& stock : problem.stocks) {
        all.stocks.push_back(stock.available);
    }
    return all;
}

StockPlan first_fit(const StockProblem& problem, Remaining remaining, FirstFitRule rule) {
    return FirstFit(problem, std::move(remaining), rule).run();
}

} // namespace libsplice
