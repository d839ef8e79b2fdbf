// A dive: patterns of the linear programme are fixed one after the other, and what remains is
// planned anew.
#include "libsplice/reel/solver/goal_search.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

constexpr double hardly = 1e-6;

std::int64_t pieces_in(const Remaining& remaining) {
    std::int64_t pieces = 0;
    for (const std::int64_t count : remaining.items) {
        pieces += count;
    }
    return pieces;
}

} // namespace

PartPlan GoalSearch::nothing_fixed() const {
    PartPlan part;
    part.remaining = everything(problem_);
    part.plan.loose.assign(problem_.items.size(), 0);
    part.plan.unplaced.assign(problem_.items.size(), 0);
    return part;
}

/// How often the whole pattern can still be cut.
std::int64_t GoalSearch::room_for(const Remaining& remaining, const Column& column) const {
    std::int64_t times = remaining.stocks[column.stock];
    for (const Take& take : column.takes) {
        times = std::min(times, remaining.items[take.item] / take.count);
    }
    return times;
}

void GoalSearch::open_all() {
    for (std::size_t c = 0; c < pool_added_; ++c) {
        master_.set_highest(pool_first_ + c, unbounded);
    }
}

/// About as many of each stock as the linear programme uses, but whole numbers of them, that cost
/// less than the best plan and could hold all pieces: of several tries the dearest, which leaves
/// most room. All stocks where none is found.
std::vector<std::int64_t> GoalSearch::slightly_cheaper_stocks() {
    constexpr int tries = 200;
    const std::vector<std::int64_t> all = everything(problem_).stocks;
    Nanometres wanted = 0;
    for (const StockItem& item : problem_.items) {
        wanted += item.loose ? 0 : (item.length + problem_.cut_loss) * item.count;
    }
    std::vector<std::int64_t> found = all;
    Amount dearest = -1;
    for (int i = 0; i < tries; ++i) {
        std::vector<std::int64_t> stocks = all;
        Amount cost = 0;
        Nanometres holds = 0;
        for (std::size_t s = 0; s < stocks.size(); ++s) {
            const auto off = static_cast<double>(random_() % 1000) / 250.0 - 1.5; // -1.5 to 2.5
            const auto about = static_cast<std::int64_t>(relaxed_stocks_[s] + off);
            stocks[s] = std::clamp<std::int64_t>(about, 0, all[s]);
            cost += problem_.stocks[s].each[0] * stocks[s];
            holds += (problem_.stocks[s].length + problem_.cut_loss) * stocks[s];
        }
        if (holds >= wanted && cost < best_.value[0] && cost > dearest) {
            dearest = cost;
            found = std::move(stocks);
        }
    }
    return found;
}

/// Patterns that hold more than remains are no part of the linear programme.
void GoalSearch::shut_unfit(const Remaining& remaining) {
    for (std::size_t c = 0; c < pool_added_; ++c) {
        const bool fits = room_for(remaining, pool_.columns()[c]) > 0;
        master_.set_highest(pool_first_ + c, fits ? unbounded : 0.0);
    }
}

/// Cuts a pattern `times` times, without the pieces that are not wanted any more.
bool GoalSearch::fix(PartPlan& part, std::size_t column, std::int64_t times) const {
    const Column& whole = pool_.columns()[column];
    times = std::min(times, part.remaining.stocks[whole.stock]);
    while (times > 0) {
        Pattern pattern{whole.stock, {}, times};
        for (const Take& take : whole.takes) {
            const auto count = static_cast<std::int32_t>(
                std::min<std::int64_t>(take.count, part.remaining.items[take.item]));
            if (count > 0) {
                pattern.takes.push_back({take.item, count});
                pattern.times = std::min(pattern.times, part.remaining.items[take.item] / count);
            }
        }
        if (pattern.takes.empty()) {
            return false;
        }
        part.remaining.stocks[pattern.stock] -= pattern.times;
        for (const Take& take : pattern.takes) {
            part.remaining.items[take.item] -= take.count * pattern.times;
        }
        const Goals price = price_of(problem_, pattern);
        for (std::size_t g = 0; g < most_goals; ++g) {
            part.spent[g] += price[g] * pattern.times;
        }
        times -= pattern.times;
        part.plan.patterns.push_back(std::move(pattern));
    }
    return true;
}

void GoalSearch::take_loose(PartPlan& part, std::size_t item, std::int64_t count) const {
    count = std::min(count, part.remaining.items[item]);
    if (count <= 0) {
        return;
    }
    part.remaining.items[item] -= count;
    part.plan.loose[item] += count;
    for (std::size_t g = 0; g < most_goals; ++g) {
        part.spent[g] += (*problem_.items[item].loose)[g] * count;
    }
}

/// Whether nothing better can come of it: a piece is missing, or it costs too much already.
bool GoalSearch::hopeless(const PartPlan& part) const {
    const auto values = master_.column_values();
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        if (values[i] > hardly) {
            return true;
        }
    }
    const double least = scaled(part.spent[goal_], goal_) + master_.value();
    const double wanted = scaled(best_.value[goal_] - step_, goal_);
    return least > wanted + hardly * std::max(1.0, wanted);
}

/// Fixes what the linear programme uses whole, else what it uses most; false if it uses nothing.
bool GoalSearch::fix_some(PartPlan& part) {
    struct Used {
        double value;
        std::size_t column;
    };
    std::vector<Used> used;
    const auto values = master_.column_values();
    bool fixed = false;
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        const auto whole = static_cast<std::int64_t>(values[problem_.items.size() + i] + hardly);
        take_loose(part, i, whole);
        fixed = fixed || whole > 0;
    }
    for (std::size_t c = 0; c < pool_added_; ++c) {
        if (values[pool_first_ + c] > hardly) {
            used.push_back({values[pool_first_ + c], c});
        }
    }
    std::ranges::stable_sort(used, std::ranges::greater(), &Used::value);
    for (const auto& [value, column] : used) {
        const auto whole = static_cast<std::int64_t>(value + hardly);
        if (whole > 0) {
            fixed = fix(part, column,
                        std::min(whole, room_for(part.remaining, pool_.columns()[column]))) ||
                    fixed;
        }
    }
    if (fixed) {
        return true;
    }
    if (used.empty()) {
        return false;
    }
    // Later dives take another one of the first few; large remainders take several at once.
    const std::size_t choices = std::min<std::size_t>(used.size(), dives_ == 0 ? 1 : 3);
    std::swap(used[0], used[random_() % choices]);
    const std::int64_t pieces = pieces_in(part.remaining);
    const std::size_t several = 1 + static_cast<std::size_t>(pieces / 100);
    for (std::size_t k = 0; k < std::min(several, used.size()); ++k) {
        if (k > 0 && used[k].value < 0.5) {
            break;
        }
        fix(part, used[k].column,
            std::min<std::int64_t>(1, room_for(part.remaining, pool_.columns()[used[k].column])));
    }
    return true;
}

void GoalSearch::dive(const std::vector<std::int64_t>& stocks) {
    PartPlan part = nothing_fixed();
    part.remaining.stocks = stocks;
    constexpr int rounds_each = 40;
    while (pieces_in(part.remaining) > 0) {
        set_rows(part.remaining, part.spent);
        shut_unfit(part.remaining);
        generate(part.remaining, dives_ == 0 && part.plan.patterns.empty() ? 1000 : rounds_each,
                 false);
        if (limits_.reached() || !master_.solve() || hopeless(part) || !fix_some(part)) {
            break;
        }
    }
    finish(std::move(part));
    open_all();
}

/// What remains is cut first-fit; the plan counts if nothing is left over.
void GoalSearch::finish(PartPlan part) {
    StockPlan rest = first_fit(problem_, part.remaining, FirstFitRule::least_per_piece);
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        if (rest.unplaced[i] > 0) {
            return;
        }
        part.plan.loose[i] += rest.loose[i];
    }
    for (Pattern& pattern : rest.patterns) {
        part.plan.patterns.push_back(std::move(pattern));
    }
    keep_if_better(std::move(part.plan));
}

} // namespace libsplice
