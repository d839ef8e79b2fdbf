// Like pieces become one item and rows of stock become stocks; a group of pieces is given stock
// of one lot.
#include "libsplice/reel/rope_problem.h"

#include "libsplice/reel/solver/first_fit.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

namespace libsplice {

namespace {

/// Pieces that must all come from one lot, whichever it is; empty: each from any.
std::string group_of(const Demand& demand, bool lot_is_stated) {
    if (!demand.lot.empty()) {
        return lot_is_stated ? std::string() : "lot\n" + demand.lot;
    }
    return demand.pair.empty() ? std::string() : "pair\n" + demand.boat + '\n' + demand.pair;
}

class ProblemBuilder {
  public:
    ProblemBuilder(const ReelQuestion& question, const RopeShare& share, const LeftOut& left_out)
        : question_(question), share_(share), left_out_(left_out) {
        for (const std::size_t row : share.stock) {
            if (!question.stock[row].lot.empty()) {
                lots_.insert(question.stock[row].lot);
            }
        }
    }

    RopeProblem build(const std::optional<LotChoice>& choice) {
        StockProblem& problem = built_.problem;
        problem.cut_loss = question_.cut_loss;
        problem.goals = question_.objective == Objective::waste ? 3 : 2;
        for (const std::size_t row : share_.stock) {
            if (question_.stock[row].length && !left_out_[row]) {
                add_stock(row, question_.stock[row].count.value_or(no_limit));
            }
        }
        for (const std::size_t demand : share_.demands) {
            add_demand(demand);
        }
        if (choice) {
            give_lots(*choice);
        }
        for (StockItem& item : problem.items) {
            if (std::ranges::find(item.allowed, false) == item.allowed.end()) {
                item.allowed.clear();
            }
        }
        return std::move(built_);
    }

  private:
    std::size_t add_stock(std::size_t row, std::int64_t available) {
        const ReelStock& stock = question_.stock[row];
        Stock added;
        added.length = *stock.length;
        added.available = std::min(available, no_limit);
        added.each = goals_of(question_, stock, *stock.length);
        added.usable = std::max<Nanometres>(1, stock.usable);
        added.waste[question_.objective == Objective::cost ? 1 : 0] =
            question_.objective != Objective::new_reels;
        built_.problem.stocks.push_back(added);
        built_.stock_rows.push_back(row);
        return built_.problem.stocks.size() - 1;
    }

    [[nodiscard]] bool is_stated(const Demand& demand) const { return lots_.contains(demand.lot); }

    void add_demand(std::size_t index) {
        const Demand& demand = question_.demands[index];
        const std::string group = group_of(demand, is_stated(demand));
        const std::string lot = is_stated(demand) ? demand.lot : std::string();
        const auto key = std::tuple(-demand.length, demand.colour, lot, group);
        const auto [at, is_new] = items_.emplace(key, built_.problem.items.size());
        if (is_new) {
            add_item(demand, group);
        }
        built_.problem.items[at->second].count += demand.count;
        built_.item_demands[at->second].push_back(index);
    }

    void add_item(const Demand& demand, const std::string& group) {
        StockItem item{demand.length, 0, {}, {}};
        for (const std::size_t row : built_.stock_rows) {
            item.allowed.push_back(suits(question_.stock[row], demand, is_stated(demand)));
        }
        std::optional<std::size_t> loose;
        for (const std::size_t row : share_.stock) {
            const ReelStock& stock = question_.stock[row];
            if (!stock.length && !left_out_[row] && suits(stock, demand, is_stated(demand)) &&
                (!loose || stock.per_metre < question_.stock[*loose].per_metre)) {
                loose = row;
            }
        }
        if (loose) {
            item.loose = goals_of(question_, question_.stock[*loose], demand.length);
        }
        if (!group.empty()) {
            groups_[group].push_back(built_.problem.items.size());
        }
        built_.loose_rows.push_back(loose);
        built_.problem.items.push_back(std::move(item));
        built_.item_demands.emplace_back();
    }

    /// Every group gets a lot that can hold it, those with most rope first.
    void give_lots(const LotChoice& choice) {
        std::vector<std::vector<std::size_t>> groups;
        for (const auto& [name, items] : groups_) {
            groups.push_back(items);
        }
        std::ranges::stable_sort(groups, std::ranges::greater(), [&](const auto& items) {
            Nanometres length = 0;
            for (const std::size_t item : items) {
                length += built_.problem.items[item].length * built_.problem.items[item].count;
            }
            return length;
        });
        built_.groups = groups;
        for (std::size_t group = 0; group < groups.size(); ++group) {
            const auto& items = groups[group];
            to_pass_over_ = group < choice.size() ? choice[group] : 0;
            if (!give_stated_lot(items) && !give_one_stock(items) && !give_loose(items)) {
                for (const std::size_t item : items) {
                    built_.problem.items[item].allowed.assign(built_.problem.stocks.size(), false);
                    built_.problem.items[item].loose.reset();
                    built_.items_without_lot.push_back(item);
                }
            }
        }
    }

    /// Whether the group's pieces, with all that are held to the same stock already, fit in it.
    [[nodiscard]] bool holds(const std::vector<bool>& stocks,
                             const std::vector<std::size_t>& items) const {
        StockProblem part = built_.problem;
        Remaining remaining = everything(part);
        for (std::size_t i = 0; i < part.items.size(); ++i) {
            const bool own = std::ranges::find(items, i) != items.end();
            const bool shares = given_.contains(i) && given_.at(i) == stocks;
            part.items[i].loose.reset();
            if (!own && !shares) {
                remaining.items[i] = 0;
            } else if (own) {
                for (std::size_t s = 0; s < stocks.size(); ++s) {
                    part.items[i].allowed[s] = part.items[i].allowed[s] && stocks[s];
                }
            }
        }
        const StockPlan plan = first_fit(part, remaining, FirstFitRule::least_per_length);
        return plan.places_all();
    }

    bool passes_over() {
        if (to_pass_over_ == 0) {
            return false;
        }
        --to_pass_over_;
        return true;
    }

    bool give(std::vector<bool> stocks, const std::vector<std::size_t>& items) {
        if (!holds(stocks, items) || passes_over()) {
            return false;
        }
        for (const std::size_t item : items) {
            auto& allowed = built_.problem.items[item].allowed;
            for (std::size_t s = 0; s < stocks.size(); ++s) {
                allowed[s] = allowed[s] && stocks[s];
            }
            built_.problem.items[item].loose.reset();
            given_[item] = stocks;
        }
        return true;
    }

    bool give_stated_lot(const std::vector<std::size_t>& items) {
        const Demand& first = question_.demands[built_.item_demands[items[0]][0]];
        if (!first.lot.empty()) {
            return false; // the lot is named, and no row has it
        }
        return std::ranges::any_of(lots_, [&](const std::string& lot) {
            std::vector<bool> stocks;
            for (const std::size_t row : built_.stock_rows) {
                stocks.push_back(question_.stock[row].lot == lot);
            }
            return give(std::move(stocks), items);
        });
    }

    /// Reels whose lot is not known are each a lot of their own: one is set apart.
    bool give_one_stock(const std::vector<std::size_t>& items) {
        for (std::size_t s = 0; s < built_.problem.stocks.size(); ++s) {
            const Stock& stock = built_.problem.stocks[s];
            if (!question_.stock[built_.stock_rows[s]].lot.empty() || stock.available == 0) {
                continue;
            }
            const bool new_one = stock.available > 1;
            const std::size_t one = new_one ? set_one_apart(s) : s;
            std::vector<bool> stocks(built_.problem.stocks.size(), false);
            stocks[one] = true;
            if (give(std::move(stocks), items)) {
                return true;
            }
            if (new_one) {
                put_back(s);
            }
        }
        return false;
    }

    std::size_t set_one_apart(std::size_t s) {
        std::int64_t& available = built_.problem.stocks[s].available;
        available = available < no_limit ? available - 1 : no_limit;
        const std::size_t one = add_stock(built_.stock_rows[s], 1);
        for (StockItem& item : built_.problem.items) {
            item.allowed.push_back(item.allowed[s]);
        }
        for (auto& [item, stocks] : given_) {
            stocks.push_back(false);
            built_.problem.items[item].allowed[one] = false;
        }
        return one;
    }

    void put_back(std::size_t s) {
        std::int64_t& available = built_.problem.stocks[s].available;
        available = available < no_limit ? available + 1 : no_limit;
        built_.problem.stocks.pop_back();
        built_.stock_rows.pop_back();
        for (StockItem& item : built_.problem.items) {
            item.allowed.pop_back();
        }
        for (auto& [item, stocks] : given_) {
            stocks.pop_back();
        }
    }

    bool give_loose(const std::vector<std::size_t>& items) {
        const bool all = std::ranges::all_of(
            items, [&](std::size_t item) { return built_.loose_rows[item].has_value(); });
        if (!all || passes_over()) {
            return false;
        }
        for (const std::size_t item : items) {
            built_.problem.items[item].allowed.assign(built_.problem.stocks.size(), false);
            given_[item] = std::vector<bool>(built_.problem.stocks.size(), false);
        }
        return true;
    }

    const ReelQuestion& question_;
    const RopeShare& share_;
    const LeftOut& left_out_;
    RopeProblem built_;
    std::size_t to_pass_over_ = 0; ///< lots that could hold the group at hand
    std::set<std::string> lots_;   ///< that some row states
    std::map<std::tuple<Nanometres, std::string, std::string, std::string>, std::size_t> items_;
    std::map<std::string, std::vector<std::size_t>> groups_; ///< items
    std::map<std::size_t, std::vector<bool>> given_;         ///< by item of a group: its stocks
};

} // namespace

bool suits(const ReelStock& row, const Demand& demand, bool lot_is_stated) {
    const bool colour = demand.colour.empty() || row.colour.empty() || demand.colour == row.colour;
    const bool lot =
        demand.lot.empty() || (lot_is_stated ? demand.lot == row.lot : row.lot.empty());
    return colour && lot;
}

bool is_priced(const ReelQuestion& question, const RopeShare& share) {
    return std::ranges::all_of(share.stock,
                               [&](std::size_t row) { return question.stock[row].priced; });
}

Money money_of(const ReelStock& row, Nanometres length) {
    if (row.per_reel) {
        return *row.per_reel;
    }
    return std::llround(static_cast<long double>(row.per_metre) * static_cast<long double>(length) /
                        static_cast<long double>(nanometres_per_metre));
}

Goals goals_of(const ReelQuestion& question, const ReelStock& row, Nanometres length) {
    const bool is_reel = row.kind != StockKind::offcut && row.length;
    switch (question.objective) {
    case Objective::cost: {
        const Money money = money_of(row, length);
        return {row.kind == StockKind::offcut
                    ? std::llround(static_cast<double>(money) * question.offcut_rate)
                    : money};
    }
    case Objective::waste:
        return {0, length, is_reel ? 1 : 0};
    case Objective::new_reels:
        return {is_reel ? 1 : 0, length};
    }
    Expects(false);
    return {};
}

RopeProblem rope_problem(const ReelQuestion& question, const RopeShare& share,
                         const LeftOut& left_out, const std::optional<LotChoice>& choice) {
    return ProblemBuilder(question, share, left_out).build(choice);
}

} // namespace libsplice
