#include "libsplice/reel/column_pool.h"

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
        unit_ = std::gcd(unit_, item.length + problem.kerf);
    }
    for (const StockItem& item : problem.items) {
        sizes_.push_back((item.length + problem.kerf) / unit_);
    }
    for (std::size_t s = 0; s < problem.stocks.size(); ++s) {
        const Stock& stock = problem.stocks[s];
        const bool wastes = std::ranges::find(stock.waste, true) != stock.waste.end();
        uses_.push_back({s, (stock.length + problem.kerf) / unit_, wastes});
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

ColumnPool::Best ColumnPool::best_of(const StockUse& use, const Offer& offer) const {
    const Stock& stock = problem_.stocks[use.stock];
    Amount cost = 0;
    Amount slope = 0;
    Amount all_waste = 0;
    for (std::size_t goal = 0; goal < most_goals; ++goal) {
        cost += stock.each[goal] * offer.weights[goal];
        if (use.to_waste && stock.waste[goal]) {
            all_waste += stock.length * offer.weights[goal];
            slope += unit_ * offer.weights[goal];
        }
    }
    std::vector<KnapsackItem> items;
    items.reserve(sizes_.size());
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
        items.push_back({sizes_[i], offer.prices[i] + slope * sizes_[i], offer.most[i]});
    }
    cost += all_waste;
    const Filling filling =
        fill_knapsack({items, use.capacity, slope, all_waste, offer.beat + cost});
    return {filling.at_most - cost, takes_of(filling.counts)};
}

} // namespace libsplice
