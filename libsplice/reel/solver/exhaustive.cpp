// A search over all plans that remembers the best way on from every set of pieces and stock
// left.
#include "libsplice/reel/solver/exhaustive.h"

#include "libsplice/reel/solver/first_fit.h"

#include <algorithm>
#include <numeric>
#include <string>
#include <unordered_map>

namespace libsplice {

namespace {

/// From every set of pieces and stock that is left, the cheapest way on, remembered.
class EveryPlan {
  public:
    EveryPlan(const StockProblem& problem, const SearchLimits& limits, std::int64_t most_steps)
        : problem_(problem), limits_(limits), steps_left_(most_steps), state_(everything(problem)) {
        order_.resize(problem.items.size());
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
            return problem.items[a].length > problem.items[b].length;
        });
        const std::int64_t pieces =
            std::accumulate(state_.items.begin(), state_.items.end(), std::int64_t{0});
        for (std::int64_t& stock : state_.stocks) {
            stock = std::min(stock, pieces);
        }
    }

    std::optional<StockPlan> run() {
        const Step* step = best_from_here();
        if (step == nullptr || !step->possible) {
            return std::nullopt;
        }
        StockPlan plan;
        plan.loose.assign(problem_.items.size(), 0);
        plan.unplaced.assign(problem_.items.size(), 0);
        follow(plan);
        plan.value = price_of(problem_, plan);
        plan.bound = plan.value[0];
        plan.proved = true;
        return plan;
    }

  private:
    /// The best first cut from a state, for its longest piece.
    struct Step {
        bool possible = false;
        Goals price{};
        std::optional<Pattern> cut; ///< none: the piece is had loose, or nothing is left to do
    };

    [[nodiscard]] std::string key() const {
        std::string key;
        for (const auto* counts : {&state_.items, &state_.stocks}) {
            for (const std::int64_t count : *counts) {
                key.append(reinterpret_cast<const char*>(&count), sizeof count);
            }
        }
        return key;
    }

    /// The order_ index of the longest piece that is left, or the number of items.
    [[nodiscard]] std::size_t longest() const {
        std::size_t at = 0;
        while (at < order_.size() && state_.items[order_[at]] == 0) {
            ++at;
        }
        return at;
    }

    // NOLINTNEXTLINE(misc-no-recursion): as deep as there are pieces
    const Step* best_from_here() {
        std::string here = key();
        if (const auto known = known_.find(here); known != known_.end()) {
            return &known->second;
        }
        Step best;
        const std::size_t at = longest();
        if (at == order_.size()) {
            best.possible = true;
        } else if (!try_loose(order_[at], best) || !try_stocks(at, best)) {
            return nullptr;
        }
        return &known_.emplace(std::move(here), std::move(best)).first->second;
    }

    // NOLINTNEXTLINE(misc-no-recursion)
    bool try_loose(std::size_t item, Step& best) {
        if (!problem_.items[item].loose) {
            return true;
        }
        --state_.items[item];
        const Step* rest = best_from_here();
        ++state_.items[item];
        return rest != nullptr && keep_cheaper(*rest, *problem_.items[item].loose, nullptr, best);
    }

    // NOLINTNEXTLINE(misc-no-recursion)
    bool try_stocks(std::size_t at, Step& best) {
        const std::size_t item = order_[at];
        for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
            const Nanometres room = problem_.stocks[s].length - problem_.items[item].length;
            if (state_.stocks[s] == 0 || room < 0 || !problem_.items[item].may_come_from(s)) {
                continue;
            }
            --state_.stocks[s];
            --state_.items[item];
            Pattern pattern{s, {{static_cast<std::uint32_t>(item), 1}}, 1};
            const bool done = add_pieces(at, room, pattern, best);
            ++state_.items[item];
            ++state_.stocks[s];
            if (!done) {
                return false;
            }
        }
        return true;
    }

    /// Every pattern that goes on from `pattern` with pieces from `at` on; false out of steps.
    // NOLINTNEXTLINE(misc-no-recursion)
    bool add_pieces(std::size_t at, Nanometres room, Pattern& pattern, Step& best) {
        if (--steps_left_ < 0 || (steps_left_ % 1024 == 0 && limits_.reached())) {
            return false;
        }
        const Step* rest = best_from_here();
        if (rest == nullptr || !keep_cheaper(*rest, price_of(problem_, pattern), &pattern, best)) {
            return false;
        }
        for (std::size_t next = at; next < order_.size(); ++next) {
            const std::size_t item = order_[next];
            const Nanometres size = problem_.items[item].length + problem_.cut_loss;
            if (state_.items[item] == 0 || size > room ||
                !problem_.items[item].may_come_from(pattern.stock)) {
                continue;
            }
            --state_.items[item];
            pattern.takes.push_back({static_cast<std::uint32_t>(item), 1});
            const bool done = add_pieces(next, room - size, pattern, best);
            pattern.takes.pop_back();
            ++state_.items[item];
            if (!done) {
                return false;
            }
        }
        return true;
    }

    bool keep_cheaper(const Step& rest, const Goals& price, const Pattern* cut, Step& best) const {
        Goals sum = rest.price;
        for (std::size_t goal = 0; goal < most_goals; ++goal) {
            sum[goal] += price[goal];
        }
        if (rest.possible && (!best.possible || sum < best.price)) {
            best.possible = true;
            best.price = sum;
            best.cut = cut != nullptr ? std::optional(*cut) : std::nullopt;
        }
        return true;
    }

    /// Cuts along the best steps.
    void follow(StockPlan& plan) {
        for (std::size_t at = longest(); at < order_.size(); at = longest()) {
            const Step& step = known_.at(key());
            if (!step.cut) {
                --state_.items[order_[at]];
                ++plan.loose[order_[at]];
                continue;
            }
            --state_.stocks[step.cut->stock];
            Pattern pattern = *step.cut;
            pattern.takes.clear();
            for (const Take& take : step.cut->takes) {
                --state_.items[take.item];
                add_one(pattern.takes, take.item);
            }
            add_pattern(plan, std::move(pattern));
        }
    }

    static void add_one(std::vector<Take>& takes, std::uint32_t item) {
        const auto same = std::ranges::find(takes, item, &Take::item);
        if (same == takes.end()) {
            takes.push_back({item, 1});
        } else {
            ++same->count;
        }
        std::ranges::sort(takes, {}, &Take::item);
    }

    static void add_pattern(StockPlan& plan, Pattern pattern) {
        for (Pattern& known : plan.patterns) {
            if (known.stock == pattern.stock && known.takes == pattern.takes) {
                ++known.times;
                return;
            }
        }
        plan.patterns.push_back(std::move(pattern));
    }

    const StockProblem& problem_;
    const SearchLimits& limits_;
    std::int64_t steps_left_;
    Remaining state_;
    std::vector<std::size_t> order_; ///< items, the longest first
    std::unordered_map<std::string, Step> known_;
};

} // namespace

std::optional<StockPlan> try_every_plan(const StockProblem& problem, const SearchLimits& limits,
                                        std::int64_t most_steps) {
    return EveryPlan(problem, limits, most_steps).run();
}

} // namespace libsplice
