// Branch and bound by profit per size, and a table where that takes too many steps.
#include "libsplice/reel/solver/patterns/knapsack.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>

namespace libsplice {

namespace {

Amount worth(const KnapsackTask& task, Amount value, Amount fill) {
    return value - std::max<Amount>(0, task.slope * fill - task.most_from_slope);
}

/// Depth first, as many of the densest item as will go in, then one fewer and so on.
class TreeSearch {
  public:
    explicit TreeSearch(const KnapsackTask& task) : task_(task), best_(task.beat) {
        for (std::size_t i = 0; i < task.items.size(); ++i) {
            const KnapsackItem& item = task.items[i];
            if (item.profit > 0 && item.most > 0 && item.size <= task.capacity) {
                order_.push_back(i);
            }
        }
        std::ranges::stable_sort(
            order_, [&](std::size_t a, std::size_t b) { return density(a) > density(b); });
        smallest_.resize(order_.size());
        Amount smallest = std::numeric_limits<Amount>::max();
        for (std::size_t j = order_.size(); j-- > 0;) {
            smallest = std::min(smallest, task.items[order_[j]].size);
            smallest_[j] = smallest;
        }
    }

    /// False if it ran out of steps.
    bool run() {
        std::size_t j = 0;
        for (std::int64_t step = 0; step < task_.most_steps; ++step) {
            go_down(j);
            keep_if_better();
            if (chosen_.empty()) {
                return true;
            }
            j = take_one_back();
        }
        return false;
    }

    [[nodiscard]] Amount root_bound() const {
        return order_.empty() ? task_.beat : std::max(task_.beat, upper(0, task_.capacity, 0));
    }
    [[nodiscard]] Filling result(bool complete) const {
        return {best_, complete ? best_ : root_bound(), counts_};
    }

  private:
    struct Choice {
        std::size_t j = 0;
        std::int32_t count = 0;
    };

    [[nodiscard]] double density(std::size_t item) const {
        return static_cast<double>(task_.items[item].profit) /
               static_cast<double>(task_.items[item].size);
    }

    /// Never less than what the rest can bring: the margin is far above a double's rounding.
    [[nodiscard]] Amount upper(std::size_t j, Amount room, Amount value) const {
        constexpr double margin = 1.0 + 1e-12;
        const double rest = static_cast<double>(room) * density(order_[j]) * margin;
        return value + static_cast<Amount>(std::ceil(rest));
    }

    void go_down(std::size_t j) {
        while (j < order_.size() && room() >= smallest_[j] && upper(j, room(), value_) > best_) {
            const KnapsackItem& item = task_.items[order_[j]];
            const auto count =
                static_cast<std::int32_t>(std::min<Amount>(item.most, room() / item.size));
            if (count > 0) {
                chosen_.push_back({j, count});
                fill_ += count * item.size;
                value_ += count * item.profit;
            }
            ++j;
        }
    }

    std::size_t take_one_back() {
        Choice& last = chosen_.back();
        const std::size_t next = last.j + 1;
        const KnapsackItem& item = task_.items[order_[last.j]];
        fill_ -= item.size;
        value_ -= item.profit;
        if (--last.count == 0) {
            chosen_.pop_back();
        }
        return next;
    }

    void keep_if_better() {
        const Amount value = worth(task_, value_, fill_);
        if (value <= best_) {
            return;
        }
        best_ = value;
        counts_.assign(task_.items.size(), 0);
        for (const Choice& choice : chosen_) {
            counts_[order_[choice.j]] = choice.count;
        }
    }

    [[nodiscard]] Amount room() const { return task_.capacity - fill_; }

    const KnapsackTask& task_;
    std::vector<std::size_t> order_; ///< items by profit per size
    std::vector<Amount> smallest_;   ///< size of all from there on
    std::vector<Choice> chosen_;
    Amount fill_ = 0;
    Amount value_ = 0;
    Amount best_;
    std::vector<std::int32_t> counts_;
};

constexpr Amount impossible = std::numeric_limits<Amount>::min() / 2;
/// The largest table that is worth its memory.
constexpr Amount largest_table = 200'000'000;

} // namespace

/// Like items are taken in doubling numbers, so that every count can be made up of few bundles.
std::vector<KnapsackTable::Bundle> KnapsackTable::bundles_of(std::span<const KnapsackItem> items,
                                                             Amount capacity) {
    std::vector<Bundle> bundles;
    for (std::size_t i = 0; i < items.size(); ++i) {
        std::int64_t most =
            items[i].profit > 0 ? std::min(items[i].most, capacity / items[i].size) : 0;
        for (std::int64_t bundle = 1; most > 0; bundle *= 2) {
            const std::int64_t count = std::min(bundle, most);
            bundles.push_back({i, static_cast<std::int32_t>(count)});
            most -= count;
        }
    }
    return bundles;
}

Amount KnapsackTable::work(std::span<const KnapsackItem> items, Amount capacity) {
    const auto rows = static_cast<Amount>(bundles_of(items, capacity).size()) + 1;
    return capacity > std::numeric_limits<Amount>::max() / rows ? std::numeric_limits<Amount>::max()
                                                                : capacity * rows;
}

void KnapsackTable::make(std::span<const KnapsackItem> items, Amount capacity) {
    items_ = items;
    bundles_ = bundles_of(items, capacity);
    width_ = static_cast<std::size_t>(capacity) + 1;
    fullest_ = 0;
    values_.assign(width_, impossible);
    values_[0] = 0;
    taken_.resize(std::max(taken_.size(), bundles_.size() * width_));
    for (std::size_t b = 0; b < bundles_.size(); ++b) {
        add(b);
    }
}

void KnapsackTable::add(std::size_t bundle) {
    const KnapsackItem& item = items_[bundles_[bundle].item];
    const auto size = static_cast<std::size_t>(item.size * bundles_[bundle].count);
    const Amount profit = item.profit * bundles_[bundle].count;
    fullest_ = std::min(width_ - 1, fullest_ + size);
    char* taken = taken_.data() + bundle * width_;
    std::fill(taken, taken + std::min(size, fullest_ + 1), char{0});
    for (std::size_t fill = fullest_; fill >= size; --fill) {
        const Amount with = values_[fill - size] + profit; // stays far below 0 if impossible
        const bool better = with > values_[fill];
        values_[fill] = better ? with : values_[fill];
        taken[fill] = better ? 1 : 0;
    }
}

std::vector<std::int32_t> KnapsackTable::trace(std::size_t fill) const {
    std::vector<std::int32_t> counts(items_.size(), 0);
    for (std::size_t b = bundles_.size(); b-- > 0;) {
        if (taken_[b * width_ + fill] != 0) {
            const auto [item, count] = bundles_[b];
            counts[item] += count;
            fill -= static_cast<std::size_t>(items_[item].size * count);
        }
    }
    return counts;
}

Filling KnapsackTable::best(const KnapsackTask& task) const {
    std::optional<std::size_t> best;
    Amount best_worth = task.beat;
    for (std::size_t fill = 0; fill <= std::min(fullest_, static_cast<std::size_t>(task.capacity));
         ++fill) {
        if (values_[fill] >= 0) {
            const Amount value = worth(task, values_[fill], static_cast<Amount>(fill));
            if (value > best_worth) {
                best_worth = value;
                best = fill;
            }
        }
    }
    return {best_worth, best_worth, best ? trace(*best) : std::vector<std::int32_t>()};
}

Filling fill_knapsack(const KnapsackTask& task, KnapsackTable& table) {
    TreeSearch tree(task);
    const bool complete = tree.run();
    if (complete || !task.exact || KnapsackTable::work(task.items, task.capacity) > largest_table) {
        return tree.result(complete);
    }
    table.make(task.items, task.capacity);
    return table.best(task);
}

} // namespace libsplice
