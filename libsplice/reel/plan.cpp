// Rope by rope, two at a time, and then the sum of it all.
#include "libsplice/reel/plan.h"

#include "libsplice/reel/rope_plan.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <map>
#include <mutex>
#include <numeric>
#include <set>
#include <thread>
#include <utility>

namespace libsplice {

namespace {

constexpr std::size_t most_threads = 2;

/// What a metre costs by the rows of the stock, the first that says it.
std::optional<Money> price_on_stock(const ReelQuestion& question, const std::string& rope) {
    for (const ReelStock& row : question.stock) {
        if (row.rope != rope || !row.priced || (row.per_reel && !row.length)) {
            continue;
        }
        return row.per_reel ? std::llround(static_cast<long double>(*row.per_reel) *
                                           static_cast<long double>(nanometres_per_metre) /
                                           static_cast<long double>(*row.length))
                            : row.per_metre;
    }
    return std::nullopt;
}

/// Rope by the metre of the sort and colour that a demand asks for.
ReelStock to_buy(const ReelQuestion& question, const Demand& demand) {
    ReelStock row;
    row.rope = demand.rope;
    row.title = demand.title;
    row.colour = demand.colour;
    row.kind = StockKind::order;
    const auto on_stock = price_on_stock(question, demand.rope);
    const auto price = on_stock ? on_stock : demand.per_metre;
    row.priced = price.has_value();
    row.per_metre = price.value_or(0);
    return row;
}

/// The shares of all ropes. Rows for what the stock lacks are added to the question, behind its
/// own.
std::vector<RopeShare> part(ReelQuestion& question) {
    const std::size_t own_rows = question.stock.size();
    std::vector<RopeShare> shares;
    std::map<std::string, std::size_t> places;
    std::set<std::pair<std::string, std::string>> bought; // rope and colour
    for (std::size_t d = 0; d < question.demands.size(); ++d) {
        const Demand& demand = question.demands[d];
        const auto [at, is_new] = places.emplace(demand.rope, shares.size());
        if (is_new) {
            shares.emplace_back().has_stock = own_rows > 0;
        }
        RopeShare& share = shares[at->second];
        share.demands.push_back(d);
        if (bought.emplace(demand.rope, demand.colour).second) {
            share.to_buy.push_back(question.stock.size());
            question.stock.push_back(to_buy(question, demand));
        }
    }
    for (std::size_t s = 0; s < own_rows; ++s) {
        const auto at = places.find(question.stock[s].rope);
        if (at != places.end()) {
            shares[at->second].stock.push_back(s);
        }
    }
    return shares;
}

/// Takes ropes one after the other from the list that all threads share.
class Team {
  public:
    Team(const ReelQuestion& question, const std::vector<RopeShare>& shares,
         const SearchLimits& limits)
        : question_(question),
          limits_(limits),
          shares_(shares),
          plans_(shares_.size()),
          seen_(shares_.size()),
          ended_(shares_.size()) {}

    /// All ropes in half of the time; what is left goes to those that had not ended.
    std::vector<ReelPlan> run() {
        std::vector<std::size_t> ropes(shares_.size());
        std::iota(ropes.begin(), ropes.end(), std::size_t{0});
        go_through(ropes, 0.5);
        std::erase_if(ropes, [this](std::size_t rope) { return ended_[rope]; });
        go_through(ropes, 1.0);
        return std::move(plans_);
    }

  private:
    using Clock = std::chrono::steady_clock;

    void go_through(const std::vector<std::size_t>& ropes, double share_of_time) {
        next_ = 0;
        std::vector<std::thread> others;
        for (std::size_t k = 1; k < std::min(most_threads, ropes.size()); ++k) {
            others.emplace_back([&] { work(ropes, share_of_time); });
        }
        work(ropes, share_of_time);
        for (std::thread& other : others) {
            other.join();
        }
    }

    void work(const std::vector<std::size_t>& ropes, double share_of_time) {
        for (std::size_t k = next_++; k < ropes.size(); k = next_++) {
            const std::size_t rope = ropes[k];
            SearchLimits limits = limits_;
            limits.deadline = deadline_of(ropes.size() - k, share_of_time);
            if (limits_.on_progress) {
                limits.on_progress = [this, rope](const SearchProgress& own) {
                    report(rope, own);
                };
            }
            ReelPlan plan = plan_rope(question_, shares_[rope], limits);
            ended_[rope] = static_cast<char>(plan.proved || !limits.reached());
            if (plans_[rope].ledger.empty() || is_better(plan, plans_[rope])) {
                plans_[rope] = std::move(plan);
            }
        }
    }

    static bool is_better(const ReelPlan& plan, const ReelPlan& other) {
        return std::pair(plan.bought + plan.unplaced_length, plan.quality.value) <=
               std::pair(other.bought + other.unplaced_length, other.quality.value);
    }

    /// The time that there is, shared among the ropes that are left.
    [[nodiscard]] std::optional<Clock::time_point> deadline_of(std::size_t ropes_left,
                                                               double share_of_time) const {
        if (!limits_.deadline) {
            return std::nullopt;
        }
        const auto now = Clock::now();
        const auto rounds = (ropes_left + most_threads - 1) / most_threads;
        const auto left = std::chrono::duration<double>(*limits_.deadline - now) * share_of_time /
                          static_cast<double>(rounds);
        return now + std::chrono::duration_cast<Clock::duration>(left);
    }

    /// The sum of all ropes; where money is sought, without those whose prices are not known,
    /// unless no price is.
    void report(std::size_t rope, const SearchProgress& own) {
        if (question_.objective == Objective::cost && !is_priced(question_, shares_[rope]) &&
            std::ranges::any_of(
                shares_, [this](const RopeShare& share) { return is_priced(question_, share); })) {
            return;
        }
        const std::lock_guard lock(mutex_);
        seen_[rope] = own;
        SearchProgress sum;
        for (const SearchProgress& one : seen_) {
            sum.bound += one.bound;
            sum.value += one.value;
        }
        limits_.on_progress(sum);
    }

    const ReelQuestion& question_;
    const SearchLimits& limits_;
    const std::vector<RopeShare>& shares_;
    std::vector<ReelPlan> plans_;
    std::atomic<std::size_t> next_{0};
    std::mutex mutex_;
    std::vector<SearchProgress> seen_;
    std::vector<char> ended_; ///< by rope, so that threads can set them side by side
};

template <class T>
void append(std::vector<T>& to, std::vector<T> from) {
    std::ranges::move(from, std::back_inserter(to));
}

Fault unbalanced(std::string text) {
    return {Code::rope_unbalanced,
            std::move(text) + "; please report this, with the job and the stock"};
}

} // namespace

ReelPlan plan_reels(const ReelQuestion& question, const SearchLimits& limits) {
    ReelQuestion asked = question;
    const std::vector<RopeShare> shares = part(asked);
    std::vector<ReelPlan> plans = Team(asked, shares, limits).run();
    ReelPlan whole;
    for (std::size_t rope = 0; rope < plans.size(); ++rope) {
        ReelPlan& plan = plans[rope];
        append(whole.cuts, std::move(plan.cuts));
        append(whole.order, std::move(plan.order));
        append(whole.unplaced, std::move(plan.unplaced));
        append(whole.ledger, std::move(plan.ledger));
        const bool counts = asked.objective != Objective::cost || is_priced(asked, shares[rope]);
        (counts ? whole.quality : whole.unpriced) += plan.quality;
        whole.proved = whole.proved && plan.proved;
        whole.first_fit += plan.first_fit;
        whole.cut_into += plan.cut_into;
        whole.bought += plan.bought;
        whole.unplaced_length += plan.unplaced_length;
    }
    whole.stock = std::move(asked.stock);
    return whole;
}

std::optional<Fault> check_balance(const ReelQuestion& question, const ReelPlan& plan) {
    std::vector<std::int64_t> placed(question.demands.size(), 0);
    std::vector<std::int64_t> used(plan.stock.size(), 0);
    for (const ReelCut& cut : plan.cuts) {
        Nanometres sum = cut.cut_loss + cut.left;
        for (const PlacedPiece& piece : cut.pieces) {
            sum += question.demands[piece.demand].length;
            placed[piece.demand] += cut.times;
        }
        used[cut.stock] += cut.times;
        if (sum != cut.length || cut.left < 0 || cut.cut_loss < 0) {
            return unbalanced("a cut of " + plan.stock[cut.stock].id + " does not add up");
        }
    }
    for (const Unplaced& unplaced : plan.unplaced) {
        placed[unplaced.demand] += unplaced.count;
    }
    for (std::size_t d = 0; d < placed.size(); ++d) {
        if (placed[d] != question.demands[d].count) {
            return unbalanced("the line " + question.demands[d].name +
                              " is not cut as often as asked");
        }
    }
    for (std::size_t s = 0; s < used.size(); ++s) {
        if (plan.stock[s].length && plan.stock[s].count && used[s] > *plan.stock[s].count) {
            return unbalanced("more of " + plan.stock[s].id + " is cut than there is");
        }
    }
    for (const RopeLedger& ledger : plan.ledger) {
        if (ledger.stock + ledger.ordered !=
            ledger.pieces + ledger.cut_loss + ledger.offcuts + ledger.waste) {
            return unbalanced("the rope " + ledger.rope + " does not add up");
        }
    }
    return std::nullopt;
}

} // namespace libsplice
