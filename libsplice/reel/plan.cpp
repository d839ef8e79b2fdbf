// Rope by rope, two at a time, and then the sum of it all.
#include "libsplice/reel/plan.h"

#include "libsplice/reel/rope_plan.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <map>
#include <mutex>
#include <numeric>
#include <thread>
#include <utility>

namespace libsplice {

namespace {

constexpr std::size_t most_threads = 2;

std::vector<RopeShare> shares_of(const ReelQuestion& question) {
    std::vector<RopeShare> shares;
    std::map<std::string_view, std::size_t> places;
    for (std::size_t d = 0; d < question.demands.size(); ++d) {
        const auto [at, is_new] = places.emplace(question.demands[d].rope, shares.size());
        if (is_new) {
            shares.emplace_back();
        }
        shares[at->second].demands.push_back(d);
    }
    for (std::size_t s = 0; s < question.stock.size(); ++s) {
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
    Team(const ReelQuestion& question, const SearchLimits& limits)
        : question_(question),
          limits_(limits),
          shares_(shares_of(question)),
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
                    tell(rope, own);
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
        const auto length_unplaced = [](const ReelPlan& of) {
            return std::accumulate(
                of.ledger.begin(), of.ledger.end(), Nanometres{0},
                [](Nanometres sum, const RopeLedger& ledger) { return sum - ledger.pieces; });
        };
        return std::pair(length_unplaced(plan), plan.value) <=
               std::pair(length_unplaced(other), other.value);
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

    void tell(std::size_t rope, const SearchProgress& own) {
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
    std::vector<RopeShare> shares_;
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

std::span<const std::string_view> objective_names() {
    static constexpr std::array<std::string_view, 3> names{"cost", "waste", "new-reels"};
    return names;
}

ReelPlan plan_reels(const ReelQuestion& question, const SearchLimits& limits) {
    ReelPlan whole;
    for (ReelPlan& plan : Team(question, limits).run()) {
        append(whole.cuts, std::move(plan.cuts));
        append(whole.order, std::move(plan.order));
        append(whole.unplaced, std::move(plan.unplaced));
        append(whole.ledger, std::move(plan.ledger));
        whole.bound += plan.bound;
        whole.value += plan.value;
        whole.proved = whole.proved && plan.proved;
        whole.first_fit += plan.first_fit;
        whole.cut_into += plan.cut_into;
        whole.cost += plan.cost;
    }
    return whole;
}

std::optional<Fault> check_balance(const ReelQuestion& question, const ReelPlan& plan) {
    std::vector<std::int64_t> placed(question.demands.size(), 0);
    std::vector<std::int64_t> used(question.stock.size(), 0);
    for (const ReelCut& cut : plan.cuts) {
        Nanometres sum = cut.cut_loss + cut.left;
        for (const PlacedPiece& piece : cut.pieces) {
            sum += question.demands[piece.demand].length;
            placed[piece.demand] += cut.times;
        }
        used[cut.stock] += cut.times;
        if (sum != cut.length || cut.left < 0 || cut.cut_loss < 0) {
            return unbalanced("a cut of " + question.stock[cut.stock].id + " does not add up");
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
        if (question.stock[s].length && question.stock[s].count &&
            used[s] > *question.stock[s].count) {
            return unbalanced("more of " + question.stock[s].id + " is cut than there is");
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
