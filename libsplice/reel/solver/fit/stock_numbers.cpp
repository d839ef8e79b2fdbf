// Rounds the numbers of the linear programme, changes a few by chance, and sets two so that the
// cost comes out right.
#include "libsplice/reel/solver/fit/stock_numbers.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace libsplice {

namespace {

/// Rope, with the cuts behind its pieces, that must come from stock.
Nanometres wanted_from_stock(const StockProblem& problem) {
    Nanometres wanted = 0;
    for (const StockItem& item : problem.items) {
        wanted += item.loose ? 0 : (item.length + problem.cut_loss) * item.count;
    }
    return wanted;
}

class Draws {
  public:
    Draws(const StockProblem& problem, const StockDraw& draw, std::minstd_rand& random)
        : problem_(problem), draw_(draw), random_(random), wanted_(wanted_from_stock(problem)) {
        for (const Stock& stock : problem.stocks) {
            most_.push_back(std::min(stock.available, wanted_ / length_of(stock) + 1));
        }
    }

    std::vector<std::int64_t> run() {
        constexpr int draws = 20;
        for (int i = 0; i < draws; ++i) {
            draw_once();
        }
        return std::move(best_);
    }

  private:
    void draw_once() {
        round_all();
        const std::size_t stocks = numbers_.size();
        const std::size_t changes = stocks > 2 ? random_() % 5 : 0;
        for (std::size_t k = 0; k < changes; ++k) {
            const std::size_t s = random_() % stocks;
            const auto change = static_cast<std::int64_t>(random_() % 5) - 2;
            numbers_[s] = std::clamp<std::int64_t>(numbers_[s] + change, 0, most_[s]);
        }
        const std::size_t first = random_() % stocks;
        const std::size_t second = stocks > 1 ? (first + 1 + random_() % (stocks - 1)) % stocks : 0;
        set_two(first, second);
    }

    void round_all() {
        numbers_.clear();
        for (std::size_t s = 0; s < most_.size(); ++s) {
            numbers_.push_back(std::clamp<std::int64_t>(std::llround(draw_.about[s]), 0, most_[s]));
        }
    }

    /// Goes through all numbers of the first that the second can make up for.
    void set_two(std::size_t first, std::size_t second) {
        constexpr std::int64_t most_tries = 500;
        numbers_[first] = 0;
        numbers_[second] = 0;
        Nanometres missing = wanted_;
        Amount cost = 0;
        for (std::size_t s = 0; s < numbers_.size(); ++s) {
            missing -= length_of(problem_.stocks[s]) * numbers_[s];
            cost += problem_.stocks[s].each[0] * numbers_[s];
        }
        const Stock& one = problem_.stocks[first];
        const Stock& other = problem_.stocks[second];
        const std::int64_t middle = std::llround(draw_.about[first]);
        const std::int64_t lowest = std::max<std::int64_t>(0, middle - most_tries / 2);
        const std::int64_t highest = std::min(most_[first], lowest + most_tries);
        for (std::int64_t n = lowest; n <= highest; ++n) {
            const Nanometres rest = missing - length_of(one) * n;
            const std::int64_t m = rest > 0 ? (rest + length_of(other) - 1) / length_of(other) : 0;
            if (m > most_[second] || (first == second && m > 0)) {
                continue;
            }
            numbers_[first] = n;
            if (first != second) {
                numbers_[second] = m;
            }
            keep_if_better(cost + one.each[0] * n + other.each[0] * m);
            if (rest <= 0) {
                break;
            }
        }
    }

    /// Of equals each is as likely.
    void keep_if_better(Amount cost) {
        if (cost >= draw_.under) {
            return;
        }
        const bool better =
            draw_.rule == DrawRule::cheapest ? cost < best_cost_ : cost > best_cost_;
        if (best_.empty() || better) {
            alike_ = 1;
        } else if (cost != best_cost_ || random_() % ++alike_ != 0) {
            return;
        }
        best_ = numbers_;
        best_cost_ = cost;
    }

    [[nodiscard]] Nanometres length_of(const Stock& stock) const {
        return stock.length + problem_.cut_loss;
    }

    const StockProblem& problem_;
    const StockDraw& draw_;
    std::minstd_rand& random_;
    Nanometres wanted_;
    std::vector<std::int64_t> most_;
    std::vector<std::int64_t> numbers_;
    std::vector<std::int64_t> best_;
    Amount best_cost_ = 0;
    unsigned alike_ = 0;
};

} // namespace

std::vector<std::int64_t> draw_stock_numbers(const StockProblem& problem, const StockDraw& draw,
                                             std::minstd_rand& random) {
    return Draws(problem, draw, random).run();
}

std::vector<std::int64_t> draw_under(const StockProblem& problem, std::span<const double> about,
                                     Amount under, std::minstd_rand& random) {
    constexpr int draws = 200;
    const Nanometres wanted = wanted_from_stock(problem);
    std::vector<std::int64_t> dearest;
    Amount dearest_cost = -1;
    for (int i = 0; i < draws; ++i) {
        std::vector<std::int64_t> numbers;
        Amount cost = 0;
        Nanometres holds = 0;
        for (std::size_t s = 0; s < problem.stocks.size(); ++s) {
            const Stock& stock = problem.stocks[s];
            const auto off = static_cast<double>(random() % 1000) / 250.0 - 1.5; // -1.5 to 2.5
            numbers.push_back(std::clamp<std::int64_t>(static_cast<std::int64_t>(about[s] + off), 0,
                                                       stock.available));
            cost += stock.each[0] * numbers.back();
            holds += (stock.length + problem.cut_loss) * numbers.back();
        }
        if (holds >= wanted && cost < under && cost > dearest_cost) {
            dearest_cost = cost;
            dearest = std::move(numbers);
        }
    }
    return dearest;
}

std::vector<double> stocks_of(const StockProblem& problem, const StockPlan& plan) {
    std::vector<double> numbers(problem.stocks.size(), 0.0);
    for (const Pattern& pattern : plan.patterns) {
        numbers[pattern.stock] += static_cast<double>(pattern.times);
    }
    return numbers;
}

} // namespace libsplice
