// Prices a pattern by a knapsack: what its pieces bring, less what its stock costs.
#include "libsplice/reel/solver/patterns/column_pool.h"

#include <algorithm>
#include <numeric>
#include <string>
#include <utility>

namespace libsplice {

namespace {

std::string key_of(std::size_t stock, std::span<const Take> takes) {
    std::string key(reinterpret_cast<const char*>(&stock), sizeof stock);
    for (const Take& take : takes) {
        key.append(reinterpret_cast<const char*>(&take.item), sizeof take.item);
        key.append(reinterpret_cast<const char*>(&take.count), sizeof take.count);
    }
    return key;
}

} // namespace

std::vector<Take> takes_of(std::span<const std::int32_t> counts) {
    std::vector<Take> takes;
    for (std::size_t item = 0; item < counts.size(); ++item) {
        if (counts[item] > 0) {
            takes.push_back({static_cast<std::uint32_t>(item), counts[item]});
        }
    }
    return takes;
}

ColumnPool::ColumnPool(const StockProblem& problem) : problem_(problem) {
    unit_ = 0;
    for (const StockItem& item : problem.items) {
        unit_ = std::gcd(unit_, item.length + problem.cut_loss);
    }
    for (const StockItem& item : problem.items) {
        sizes_.push_back((item.length + problem.cut_loss) / unit_);
    }
    all_alike_ = std::ranges::all_of(problem.items,
                                     [](const StockItem& item) { return item.allowed.empty(); });
    for (std::size_t s = 0; s < problem.stocks.size(); ++s) {
        const Stock& stock = problem.stocks[s];
        const bool wastes = std::ranges::find(stock.waste, true) != stock.waste.end();
        uses_.push_back({s, (stock.length + problem.cut_loss) / unit_, wastes});
        all_alike_ = all_alike_ && !wastes;
        largest_capacity_ = std::max(largest_capacity_, uses_.back().capacity);
        if (wastes && stock.usable <= stock.length) {
            const Amount kept = (stock.length - stock.usable) / unit_;
            uses_.push_back({s, kept, false});
        }
    }
}

bool ColumnPool::add(std::size_t stock, std::vector<Take> takes) {
    if (!known_.insert(key_of(stock, takes)).second) {
        return false;
    }
    const Goals price = price_of(problem_, Pattern{stock, takes, 1});
    columns_.push_back({stock, std::move(takes), price});
    return true;
}

/// What a use of a stock costs: its price, and its waste as if nothing were cut, of which every
/// unit of the filling takes `slope` off.
struct ColumnPool::Cost {
    Amount all = 0;
    Amount slope = 0;
    Amount waste = 0;
};

ColumnPool::Cost ColumnPool::cost_of(const StockUse& use, const Offer& offer) const {
    const Stock& stock = problem_.stocks[use.stock];
    Cost cost;
    for (std::size_t goal = 0; goal < most_goals; ++goal) {
        cost.all += stock.each[goal] * offer.weights[goal];
        if (use.to_waste && stock.waste[goal]) {
            cost.waste += stock.length * offer.weights[goal];
            cost.slope += unit_ * offer.weights[goal];
        }
    }
    cost.all += cost.waste;
    return cost;
}

std::vector<KnapsackItem> ColumnPool::items_for(const StockUse* use, const Offer& offer,
                                                Amount slope) const {
    std::vector<KnapsackItem> items;
    items.reserve(sizes_.size());
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
        const bool allowed = use == nullptr || problem_.items[i].may_come_from(use->stock);
        items.push_back(
            {sizes_[i], offer.prices[i] + slope * sizes_[i], allowed ? offer.most[i] : 0});
    }
    return items;
}

std::vector<ColumnPool::Best> ColumnPool::best_of_each(const Offer& offer) {
    constexpr Amount quick_table = 6'000'000;
    constexpr Amount largest_table = 200'000'000;
    constexpr std::int64_t quick_steps = 20'000;
    constexpr std::int64_t exact_steps = 300'000;
    std::vector<Best> best;
    const auto shared = items_for(nullptr, offer, 0);
    const bool table = all_alike_ && KnapsackTable::work(shared, largest_capacity_) <=
                                         (offer.exact ? largest_table : quick_table);
    if (table) {
        table_.make(shared, largest_capacity_);
    }
    for (std::size_t u = 0; u < uses_.size(); ++u) {
        const Cost cost = cost_of(uses_[u], offer);
        const auto items = table ? shared : items_for(&uses_[u], offer, cost.slope);
        const KnapsackTask task{
            items,      uses_[u].capacity,        cost.slope,
            cost.waste, offer.beat[u] + cost.all, offer.exact ? exact_steps : quick_steps,
            offer.exact};
        const Filling filling = table ? table_.best(task) : fill_knapsack(task, table_);
        best.push_back({filling.at_most - cost.all, takes_of(filling.counts)});
    }
    return best;
}

} // namespace libsplice
