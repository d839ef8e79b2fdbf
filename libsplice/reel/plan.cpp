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

/// Whether a plan that had more time is to be kept.
bool better(const ReelPlan& plan, const ReelPlan& than) {
    if (plan.unplaced.size() != than.unplaced.size()) {
        return plan.unplaced.size() < than.unplaced.size();
    }
    return plan.value < than.value || (plan.value == than.value && plan.bound > than.bound);
}

/// Takes ropes one after the other from the list that all threads share.
class Team {
  public:
    Team(const ReelQuestion& question, const SearchLimits& limits)
        : question_(question),
          limits_(limits),
          shares_(shares_of(question)),
          plans_(shares_.size()),
          is_planned_(shares_.size()),
          seen_(shares_.size()) {}

    /// Every rope in its share of the time; then those that were not done by the end of theirs,
    /// with the time that the others have left over.
    std::vector<ReelPlan> run() {
        turns_.resize(shares_.size());
        std::iota(turns_.begin(), turns_.end(), std::size_t{0});
        for (bool again = true; again; again = !turns_.empty() && is_time_left()) {
            take_turns();
            std::ranges::sort(late_);
            turns_ = late_.size() < turns_.size() ? std::exchange(late_, {})
                                                  : std::vector<std::size_t>();
        }
        return std::move(plans_);
    }

  private:
    void take_turns() {
        next_ = 0;
        std::vector<std::thread> others;
        for (std::size_t k = 1; k < std::min(most_threads, turns_.size()); ++k) {
            others.emplace_back([this] { work(); });
        }
        work();
        for (std::thread& other : others) {
            other.join();
        }
    }

    [[nodiscard]] bool is_time_left() const {
        return limits_.deadline && std::chrono::steady_clock::now() < *limits_.deadline;
    }

    void work() {
        for (std::size_t turn = next_++; turn < turns_.size(); turn = next_++) {
            const std::size_t rope = turns_[turn];
            SearchLimits limits = limits_;
            limits.deadline = deadline_of(turn);
            if (limits_.on_progress) {
                limits.on_progress = [this, rope](const SearchProgress& own) {
                    tell(rope, own);
                };
            }
            ReelPlan plan = plan_rope(question_, shares_[rope], limits);
            if (!is_planned_[rope] || better(plan, plans_[rope])) {
                plans_[rope] = std::move(plan);
                is_planned_[rope] = true;
            }
            if (limits.deadline && std::chrono::steady_clock::now() >= *limits.deadline) {
                const std::lock_guard lock(mutex_);
                late_.push_back(rope);
            }
            if (limits_.on_progress) {
                tell(rope, {plans_[rope].bound, plans_[rope].value});
            }
        }
    }

    /// The time that is left, shared among the ropes that are left.
    [[nodiscard]] std::optional<std::chrono::steady_clock::time_point>
    deadline_of(std::size_t turn) const {
        if (!limits_.deadline) {
            return std::nullopt;
        }
        const auto now = std::chrono::steady_clock::now();
        const auto rounds =
            static_cast<std::int64_t>((turns_.size() - turn + most_threads - 1) / most_threads);
        return now + (*limits_.deadline - now) / rounds;
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
    std::vector<char> is_planned_;   ///< no vector<bool>: two threads write to it
    std::vector<std::size_t> turns_; ///< the ropes of this round
    std::vector<std::size_t> late_;  ///< those of them that were not done in time
    std::atomic<std::size_t> next_{0};
    std::mutex mutex_;
    std::vector<SearchProgress> seen_;
};

template <class T>
void append(std::vector<T>& to, std::vector<T> from) {
    std::ranges::move(from, std::back_inserter(to));
}

Fault unbalanced(std::string text) {
    return {Code::rope_unbalanced,
            std::move(text) + "; please report this, with the job and the shelf"};
}

} // namespace

std::span<const std::string_view> aim_names() {
    static constexpr std::array<std::string_view, 3> names{"cost", "waste", "fewest-reels"};
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
        Nanometres sum = cut.kerf + cut.left;
        for (const PlacedPiece& piece : cut.pieces) {
            sum += question.demands[piece.demand].length;
            placed[piece.demand] += cut.times;
        }
        used[cut.stock] += cut.times;
        if (sum != cut.length || cut.left < 0 || cut.kerf < 0) {
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
        if (ledger.shelf + ledger.ordered !=
            ledger.pieces + ledger.kerf + ledger.offcuts + ledger.waste) {
            return unbalanced("the rope " + ledger.rope + " does not add up");
        }
    }
    return std::nullopt;
}

} // namespace libsplice
