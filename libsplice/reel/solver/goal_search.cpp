#include "libsplice/reel/solver/goal_search.h"

#include "libsplice/reel/solver/safe_bound.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace libsplice {

namespace {

/// What a missing piece costs in the master, against the dearest stock.
constexpr double dearest_piece = 1000.0;

bool has_waste(const Stock& stock, std::size_t goal) {
    return stock.waste[goal];
}

Amount highest_price(const Stock& stock, std::size_t goal) {
    return stock.each[goal] + (has_waste(stock, goal) ? std::min(stock.length, stock.usable) : 0);
}

} // namespace

GoalSearch::GoalSearch(const StockProblem& problem, ColumnPool& pool, std::size_t goal,
                       StockPlan& best, const SearchLimits& limits)
    : problem_(problem),
      pool_(pool),
      goal_(goal),
      best_(best),
      limits_(limits),
      master_(problem.items.size() + problem.stocks.size() + goal),
      most_each_(most_goals, 1) {
    Amount step = 0;
    for (const Stock& stock : problem.stocks) {
        stock_limits_.lowest.push_back(0);
        stock_limits_.highest.push_back(stock.available);
        for (std::size_t g = 0; g <= goal; ++g) {
            most_each_[g] = std::max(most_each_[g], highest_price(stock, g));
        }
        step = std::gcd(step, stock.each[goal]);
        if (has_waste(stock, goal)) { // what is left is a sum of lengths and sizes
            step = std::gcd(step, std::gcd(stock.length, pool.unit()));
        }
    }
    for (const StockItem& item : problem.items) {
        if (item.loose) {
            step = std::gcd(step, (*item.loose)[goal]);
            most_each_[goal] = std::max(most_each_[goal], (*item.loose)[goal]);
        }
    }
    step_ = std::max<Amount>(1, step);
    constexpr Amount fine = Amount{1} << 36U;
    scale_ = std::max<Amount>(1, fine / most_each_[goal]);
    add_item_columns();
    add_pool_columns();
}

double GoalSearch::scaled(Amount amount, std::size_t goal) const {
    return static_cast<double>(amount) / static_cast<double>(most_each_[goal]);
}

bool GoalSearch::item_rows_are_equal() const {
    return std::ranges::any_of(problem_.stocks, [&](const Stock& stock) {
        return std::any_of(stock.waste.begin(),
                           stock.waste.begin() + static_cast<std::ptrdiff_t>(goal_) + 1,
                           [](bool waste) { return waste; });
    });
}

/// A column for a missing piece of each item, and one for a piece had loose.
void GoalSearch::add_item_columns() {
    const std::size_t items = problem_.items.size();
    for (std::size_t i = 0; i < items; ++i) {
        const Coefficient own{static_cast<int>(i), 1.0};
        master_.add_column(dearest_piece, std::span(&own, 1));
    }
    for (std::size_t i = 0; i < items; ++i) {
        const Goals loose = problem_.items[i].loose.value_or(Goals{});
        std::vector<Coefficient> coefficients{{static_cast<int>(i), 1.0}};
        for (std::size_t g = 0; g < goal_; ++g) {
            const std::size_t row = items + problem_.stocks.size() + g;
            coefficients.push_back({static_cast<int>(row), scaled(loose[g], g)});
        }
        master_.add_column(scaled(loose[goal_], goal_), coefficients);
        master_.set_highest(items + i, problem_.items[i].loose ? unbounded : 0.0);
    }
    pool_first_ = 2 * items;
}

void GoalSearch::add_pool_columns() {
    std::vector<Coefficient> coefficients;
    for (; pool_added_ < pool_.columns().size(); ++pool_added_) {
        const Column& column = pool_.columns()[pool_added_];
        coefficients.clear();
        for (const Take& take : column.takes) {
            coefficients.push_back({static_cast<int>(take.item), static_cast<double>(take.count)});
        }
        const std::size_t stock_row = problem_.items.size() + column.stock;
        coefficients.push_back({static_cast<int>(stock_row), 1.0});
        for (std::size_t g = 0; g < goal_; ++g) {
            const std::size_t row = problem_.items.size() + problem_.stocks.size() + g;
            coefficients.push_back({static_cast<int>(row), scaled(column.price[g], g)});
        }
        master_.add_column(scaled(column.price[goal_], goal_), coefficients);
    }
}

void GoalSearch::set_rows(const Remaining& remaining, const Goals& spent) {
    const std::size_t items = problem_.items.size();
    const bool equal = item_rows_are_equal();
    for (std::size_t i = 0; i < items; ++i) {
        const auto count = static_cast<double>(remaining.items[i]);
        master_.set_row(i, count, equal ? count : unbounded);
    }
    set_stock_rows({{}, remaining.stocks});
    for (std::size_t g = 0; g < goal_; ++g) {
        master_.set_row(items + problem_.stocks.size() + g, -unbounded,
                        scaled(best_.value[g] - spent[g], g));
    }
}

void GoalSearch::set_stock_rows(const StockLimits& limits) {
    for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
        const std::int64_t highest = limits.highest[s];
        master_.set_row(problem_.items.size() + s,
                        limits.lowest.empty() ? -unbounded : static_cast<double>(limits.lowest[s]),
                        highest < no_limit ? static_cast<double>(highest) : unbounded);
    }
}

/// A row's price in whole units.
Amount GoalSearch::price_of_row(std::size_t row) const {
    return std::llround(master_.row_prices()[row] *
                        static_cast<double>(most_each_[goal_] * scale_));
}

/// An item's whole price is never more than it costs loose.
void GoalSearch::price_items(const Remaining& remaining) {
    prices_.resize(problem_.items.size());
    for (std::size_t i = 0; i < prices_.size(); ++i) {
        prices_[i] = remaining.items[i] > 0 ? price_of_row(i) : 0;
        if (problem_.items[i].loose && goal_ == 0) {
            prices_[i] = std::min(prices_[i], (*problem_.items[i].loose)[0] * scale_);
        }
    }
}

/// What a unit of each goal weighs: the one that is sought, and those that must not get worse.
std::array<Amount, most_goals> GoalSearch::weights() const {
    std::array<Amount, most_goals> weights{};
    weights[goal_] = scale_;
    for (std::size_t g = 0; g < goal_; ++g) {
        const double price =
            -master_.row_prices()[problem_.items.size() + problem_.stocks.size() + g];
        const double unit =
            static_cast<double>(most_each_[goal_] * scale_) / static_cast<double>(most_each_[g]);
        weights[g] = std::max<Amount>(0, std::llround(price * unit));
    }
    return weights;
}

/// Adds the best new patterns of every use of a stock; false if none brings more than it costs.
bool GoalSearch::add_patterns(const Remaining& remaining, bool bounds, bool exact) {
    price_items(remaining);
    const Amount hardly_over = std::max<Amount>(1, most_each_[goal_] * scale_ / 100'000'000);
    ColumnPool::Offer offer{prices_, remaining.items, weights(), {}, exact};
    for (const StockUse& use : pool_.uses()) {
        offer.beat.push_back(hardly_over - price_of_row(problem_.items.size() + use.stock));
    }
    std::vector<Amount> over(problem_.stocks.size(), std::numeric_limits<Amount>::min());
    std::vector<std::int64_t> most = remaining.items;
    bool added = false;
    // Once more without the pieces that are in a pattern already: more rounds' worth at once.
    const int rounds = 1 + static_cast<int>(problem_.items.size() / 50);
    for (int round = 0; round < rounds; ++round) {
        auto best = pool_.best_of_each(offer);
        bool more = false;
        for (std::size_t u = 0; u < best.size(); ++u) {
            const std::size_t stock = pool_.uses()[u].stock;
            over[stock] = std::max(over[stock], best[u].over);
            if (best[u].takes.empty() || remaining.stocks[stock] == 0) {
                continue;
            }
            for (const Take& take : best[u].takes) {
                most[take.item] = 0;
            }
            more = pool_.add(stock, std::move(best[u].takes)) || more;
        }
        added = added || more;
        if (round == 0 && bounds) {
            raise_bound(over);
        }
        if (!more) {
            break;
        }
        offer.most = most;
        offer.exact = false;
    }
    add_pool_columns();
    return added;
}

/// The bound of prices in proportion to length, at the rate of each stock: often near the best, and
/// had at once.
void GoalSearch::raise_bound_by_length() {
    const auto sizes = pool_.sizes();
    prices_.resize(sizes.size());
    for (const StockUse& rate : pool_.uses()) {
        const Amount each = problem_.stocks[rate.stock].each[0];
        if (each == 0 || rate.to_waste || rate.capacity == 0) {
            continue;
        }
        // Of one unit of size, rounded down; a stock's filling is never more than its capacity.
        const Amount price = each * scale_ / rate.capacity;
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            prices_[i] = price * sizes[i];
            if (problem_.items[i].loose) {
                prices_[i] = std::min(prices_[i], (*problem_.items[i].loose)[0] * scale_);
            }
        }
        std::vector<Amount> over(problem_.stocks.size(), 0);
        for (const StockUse& use : pool_.uses()) {
            over[use.stock] =
                std::max(over[use.stock],
                         price * use.capacity - problem_.stocks[use.stock].each[0] * scale_);
        }
        raise_bound(over);
    }
}

void GoalSearch::raise_bound(const std::vector<Amount>& over) {
    std::vector<StockReach> reaches;
    std::vector<std::int64_t> counts;
    for (const StockItem& item : problem_.items) {
        counts.push_back(item.count);
    }
    const std::int64_t pieces = std::accumulate(counts.begin(), counts.end(), std::int64_t{0});
    for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
        const Stock& stock = problem_.stocks[s];
        const bool waste = has_waste(stock, 0);
        const std::int64_t highest = stock_limits_.highest[s];
        const std::int64_t most = waste ? std::min(highest, pieces) : highest;
        reaches.push_back({stock.each[0], over[s] + stock.each[0] * scale_, most,
                           stock_limits_.lowest[s], !waste});
    }
    bound_ = std::max(bound_, safe_bound({prices_, counts, scale_}, reaches, step_));
}

bool GoalSearch::proved() const {
    return goal_ == 0 && best_.value[0] <= bound_;
}

/// True if no pattern is missing from the linear programme any more.
bool GoalSearch::generate(const Remaining& remaining, int most_rounds, bool bounds) {
    for (int round = 0; round < most_rounds; ++round) {
        if (limits_.reached() || !master_.solve()) {
            return false;
        }
        if (!add_patterns(remaining, bounds, false) && !add_patterns(remaining, bounds, true)) {
            return true;
        }
        // Where the bound has reached the linear programme, it will not rise any more.
        const double lowest = master_.value() * static_cast<double>(most_each_[goal_]);
        if (bounds && (proved() || static_cast<double>(bound_) >= lowest)) {
            return master_.solve();
        }
        if (limits_.on_progress && bounds) {
            limits_.on_progress(
                {std::max(best_.bound, std::min(bound_, best_.value[0])), best_.value[0]});
        }
    }
    return false;
}

void GoalSearch::keep_if_better(StockPlan plan) {
    plan.value = price_of(problem_, plan);
    const auto end = static_cast<std::ptrdiff_t>(goal_) + 1;
    if (std::lexicographical_compare(plan.value.begin(), plan.value.begin() + end,
                                     best_.value.begin(), best_.value.begin() + end)) {
        plan.bound = best_.bound;
        best_ = std::move(plan);
        if (limits_.on_progress) {
            limits_.on_progress({best_.bound, best_.value[0]});
        }
    }
}

void GoalSearch::run(int most_dives) {
    const Remaining all = everything(problem_);
    bound_ = best_.bound;
    if (goal_ == 0 && dives_ == 0) {
        raise_bound_by_length();
    }
    set_rows(all, {});
    constexpr int until_done = 100'000;
    generate(all, until_done, goal_ == 0);
    best_.bound = goal_ == 0 ? bound_ : best_.bound;
    relaxed_stocks_ = stocks_used();
    search_whole();
    while (dives_ < most_dives && !proved() && !limits_.reached()) {
        const bool few = goal_ == 0 && dives_ % 2 == 1;
        dive(few ? slightly_cheaper_stocks() : all.stocks);
        ++dives_;
        if ((dives_ & (dives_ - 1)) == 0) { // ever more rarely
            search_whole();
        }
    }
}

/// How many of each stock the linear programme uses.
std::vector<double> GoalSearch::stocks_used() const {
    std::vector<double> used(problem_.stocks.size(), 0.0);
    const auto values = master_.column_values();
    for (std::size_t c = 0; c < values.size() - pool_first_; ++c) {
        used[pool_.columns()[c].stock] += values[pool_first_ + c];
    }
    return used;
}

/// The best choice of whole patterns among those that are known.
void GoalSearch::search_whole() {
    constexpr std::size_t most_items = 100; // beyond, dives and smaller parts do better
    if (proved() || limits_.reached() || problem_.items.size() > most_items) {
        return;
    }
    open_all();
    set_rows(everything(problem_), {});
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        master_.set_highest(i, 0.0);
    }
    Master::WholeSearch search;
    search.under = scaled(best_.value[goal_], goal_) - 0.5 * scaled(step_, goal_);
    search.enough = goal_ == 0 ? scaled(bound_, 0) + 1e-9 : 1e-9;
    search.most_nodes = 300;
    search.deadline = limits_.deadline;
    search.stop = limits_.stop;
    const auto whole = master_.solve_whole(search);
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        master_.set_highest(i, unbounded);
    }
    if (whole) {
        PartPlan part = nothing_fixed();
        for (std::size_t i = 0; i < problem_.items.size(); ++i) {
            take_loose(part, i, std::llround((*whole)[problem_.items.size() + i]));
        }
        for (std::size_t c = 0; c < pool_added_; ++c) {
            fix(part, c, std::llround((*whole)[pool_first_ + c]));
        }
        finish(std::move(part));
    }
}

} // namespace libsplice
