// Each round prices the pieces by the last solution and adds the best new pattern of every stock.
#include "libsplice/reel/solver/patterns/column_generation.h"

#include "libsplice/reel/solver/patterns/pattern_bound.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <utility>

namespace libsplice {

/// A piece's whole price is never more than it costs loose.
std::vector<Amount> ColumnGeneration::prices(const Remaining& remaining) const {
    std::vector<Amount> prices(problem_.items.size());
    for (std::size_t i = 0; i < prices.size(); ++i) {
        prices[i] = remaining.items[i] > 0 ? programme_.price_of_item(i) : 0;
        if (problem_.items[i].loose && units_.goal == 0) {
            prices[i] = std::min(prices[i], (*problem_.items[i].loose)[0] * units_.scale);
        }
    }
    return prices;
}

ColumnGeneration::Round ColumnGeneration::add_patterns(const Remaining& remaining, bool exact) {
    Round made{prices(remaining), {}, false};
    made.over.assign(problem_.stocks.size(), std::numeric_limits<Amount>::min());
    const Amount hardly_over = std::max<Amount>(1, units_.whole() / 100'000'000);
    ColumnPool::Offer offer{made.prices, remaining.items, programme_.weights(), {}, exact};
    for (const StockUse& use : pool_.uses()) {
        offer.beat.push_back(hardly_over - programme_.price_of_stock(use.stock));
    }
    std::vector<std::int64_t> most = remaining.items;
    // Once more without the pieces that are in a pattern already: more rounds' worth at once.
    const int rounds = 1 + static_cast<int>(problem_.items.size() / 50);
    for (int round = 0; round < rounds; ++round) {
        auto best = pool_.best_of_each(offer);
        bool more = false;
        for (std::size_t u = 0; u < best.size(); ++u) {
            const std::size_t stock = pool_.uses()[u].stock;
            if (round == 0) { // later ones price fewer pieces
                made.over[stock] = std::max(made.over[stock], best[u].over);
            }
            if (best[u].takes.empty() || remaining.stocks[stock] == 0) {
                continue;
            }
            for (const Take& take : best[u].takes) {
                most[take.item] = 0;
            }
            more = pool_.add(stock, std::move(best[u].takes)) || more;
        }
        made.added = made.added || more;
        if (!more) {
            break;
        }
        offer.most = most;
        offer.exact = false;
    }
    programme_.add_new_columns();
    return made;
}

void ColumnGeneration::complete(const PatternQuestion& question, int most_rounds) {
    programme_.ask(question);
    for (int round = 0; round < most_rounds; ++round) {
        if (limits_.reached() || !programme_.solve() ||
            (!add_patterns(question.remaining, false).added &&
             !add_patterns(question.remaining, true).added)) {
            return;
        }
    }
}

Amount ColumnGeneration::raise(const PatternQuestion& question, Amount bound, const BestPlan& best,
                               int most_rounds) {
    programme_.ask(question);
    const auto adds = [&](bool exact) {
        const Round made = add_patterns(question.remaining, exact);
        bound = std::max(
            bound, pattern_bound(problem_, units_, question.stocks, {made.prices, made.over}));
        return made.added;
    };
    for (int round = 0; round < most_rounds && !limits_.reached(); ++round) {
        const auto answer = programme_.solve();
        if (!answer || (!adds(false) && !adds(true))) {
            break;
        }
        // Where the bound has reached the programme's cost, it will not rise any more.
        const double lowest = answer->cost * static_cast<double>(units_.highest[0]);
        if (best.is_met_by(bound) || static_cast<double>(bound) >= lowest) {
            break;
        }
        best.report(bound);
    }
    return bound;
}

} // namespace libsplice
