// Gives the pieces of each pattern to lines in the order of the job, and then fills up minimum
// orders.
#include "libsplice/reel/cut_list.h"

#include "libsplice/units/show.h"

#include <algorithm>
#include <string>
#include <utility>

namespace libsplice {

namespace {

/// The lines that still want pieces of one item.
class Queue {
  public:
    Queue(const ReelQuestion& question, const std::vector<std::size_t>& demands) {
        for (const std::size_t demand : demands) {
            waiting_.push_back({demand, question.demands[demand].count});
        }
    }

    /// How often `count` pieces can be had for the first line alone; at least once.
    [[nodiscard]] std::int64_t times_alike(std::int32_t count) const {
        return std::max<std::int64_t>(1, waiting_[first_].count / count);
    }
    /// The lines of the next `count` pieces, the same `times` times over.
    void take(std::int32_t count, std::int64_t times, std::vector<std::size_t>& lines) {
        for (std::int32_t k = 0; k < count; ++k) {
            while (waiting_[first_].count == 0) {
                ++first_;
            }
            lines.push_back(waiting_[first_].demand);
            waiting_[first_].count -= times;
        }
        while (first_ < waiting_.size() && waiting_[first_].count == 0) {
            ++first_;
        }
    }

  private:
    struct Waiting {
        std::size_t demand;
        std::int64_t count;
    };
    std::vector<Waiting> waiting_;
    std::size_t first_ = 0;
};

class CutList {
  public:
    CutList(const ReelQuestion& question, const RopeShare& share, const RopeProblem& asked)
        : question_(question), share_(share), asked_(asked) {
        for (const auto& demands : asked.item_demands) {
            queues_.emplace_back(question, demands);
        }
    }

    ReelPlan write(const StockPlan& plan) {
        for (const Pattern& pattern : plan.patterns) {
            add_pattern(pattern);
        }
        for (std::size_t item = 0; item < plan.loose.size(); ++item) {
            add_loose(item, plan.loose[item]);
        }
        for (std::size_t item = 0; item < plan.unplaced.size(); ++item) {
            add_unplaced(item, plan.unplaced[item]);
        }
        fill_up_orders();
        std::ranges::stable_sort(made_.cuts, {}, &ReelCut::stock);
        add_orders();
        made_.value = plan.value[0] + added_;
        add_ledger();
        return std::move(made_);
    }

  private:
    void add_pattern(const Pattern& pattern) {
        const std::size_t row = asked_.stock_rows[pattern.stock];
        for (std::int64_t done = 0; done < pattern.times;) {
            std::int64_t times = pattern.times - done;
            for (const Take& take : pattern.takes) {
                times = std::min(times, queues_[take.item].times_alike(take.count));
            }
            ReelCut cut{row, times, *question_.stock[row].length, 0, 0, LeftIs::nothing, {}};
            Nanometres at = 0;
            for (const Take& take : pattern.takes) {
                std::vector<std::size_t> lines;
                queues_[take.item].take(take.count, times, lines);
                for (const std::size_t line : lines) {
                    cut.pieces.push_back({line, at});
                    at += question_.demands[line].length + question_.cut_loss;
                }
            }
            cut.cut_loss = cut_loss_of(asked_.problem, pattern);
            cut.left = left_of(asked_.problem, pattern);
            cut.left_is = left_is(row, cut.left);
            made_.cuts.push_back(std::move(cut));
            done += times;
        }
    }

    [[nodiscard]] LeftIs left_is(std::size_t row, Nanometres left) const {
        if (left == 0) {
            return LeftIs::nothing;
        }
        return left >= question_.stock[row].usable ? LeftIs::offcut : LeftIs::waste;
    }

    void add_loose(std::size_t item, std::int64_t count) {
        while (count > 0) {
            const std::int64_t times = std::min(count, queues_[item].times_alike(1));
            std::vector<std::size_t> lines;
            queues_[item].take(1, times, lines);
            const Nanometres length = asked_.problem.items[item].length;
            made_.cuts.push_back(
                {*asked_.loose_rows[item], times, length, 0, 0, LeftIs::nothing, {{lines[0], 0}}});
            count -= times;
        }
    }

    void add_unplaced(std::size_t item, std::int64_t count) {
        while (count > 0) {
            const std::int64_t times = std::min(count, queues_[item].times_alike(1));
            std::vector<std::size_t> lines;
            queues_[item].take(1, times, lines);
            made_.unplaced.push_back({lines[0], times, why_not(item, lines[0])});
            count -= times;
        }
    }

    [[nodiscard]] Fault why_not(std::size_t item, std::size_t line) const;

    /// What a minimum order brings beyond what is cut.
    void fill_up_orders() {
        for (const std::size_t row : share_.stock) {
            const ReelStock& stock = question_.stock[row];
            std::int64_t count = 0;
            Nanometres length = 0;
            for (const ReelCut& cut : made_.cuts) {
                if (cut.stock == row) {
                    count += cut.times;
                    length += cut.length * cut.times;
                }
            }
            if (stock.kind != StockKind::order || count == 0) {
                continue;
            }
            if (stock.length && count < stock.least_count) {
                add_whole(row, *stock.length, stock.least_count - count);
            } else if (!stock.length && length < stock.least_length) {
                add_whole(row, stock.least_length - length, 1);
            }
        }
    }

    void add_whole(std::size_t row, Nanometres length, std::int64_t times) {
        made_.cuts.push_back({row, times, length, 0, length, left_is(row, length), {}});
        if (question_.objective == Objective::cost) {
            added_ += money_of(question_.stock[row], length) * times;
        } else if (question_.objective == Objective::waste &&
                   made_.cuts.back().left_is == LeftIs::waste) {
            added_ += length * times;
        }
    }

    void add_orders() {
        for (const ReelCut& cut : made_.cuts) {
            const ReelStock& stock = question_.stock[cut.stock];
            made_.cost += money_of(stock, cut.length) * cut.times;
            if (stock.kind != StockKind::order) {
                continue;
            }
            const auto same = std::ranges::find_if(made_.order, [&](const OrderLine& line) {
                return line.stock == cut.stock && line.length == cut.length;
            });
            OrderLine& line =
                same != made_.order.end()
                    ? *same
                    : made_.order.emplace_back(OrderLine{cut.stock, cut.length, 0, 0});
            line.count += cut.times;
            line.cost += money_of(stock, cut.length) * cut.times;
        }
    }

    void add_ledger() {
        RopeLedger ledger;
        ledger.rope = question_.demands[share_.demands.front()].rope;
        for (const ReelCut& cut : made_.cuts) {
            const bool ordered = question_.stock[cut.stock].kind == StockKind::order;
            (ordered ? ledger.ordered : ledger.stock) += cut.length * cut.times;
            for (const PlacedPiece& piece : cut.pieces) {
                ledger.pieces += question_.demands[piece.demand].length * cut.times;
            }
            ledger.cut_loss += cut.cut_loss * cut.times;
            (cut.left_is == LeftIs::offcut ? ledger.offcuts : ledger.waste) += cut.left * cut.times;
        }
        made_.ledger.push_back(std::move(ledger));
    }

    const ReelQuestion& question_;
    const RopeShare& share_;
    const RopeProblem& asked_;
    std::vector<Queue> queues_; ///< by item
    ReelPlan made_;
    Amount added_ = 0; ///< what minimum orders add to the value
};

std::string metres_of(Nanometres length) {
    std::string text;
    append_metres(text, length);
    return text + " m";
}

Fault CutList::why_not(std::size_t item, std::size_t line) const {
    const Demand& demand = question_.demands[line];
    if (share_.stock.empty()) {
        return {Code::rope_not_on_stock, "the stock has no rope \"" + demand.rope + '"'};
    }
    if (std::ranges::find(asked_.items_without_lot, item) != asked_.items_without_lot.end()) {
        return {Code::lot_cannot_hold,
                demand.lot.empty()
                    ? "no one lot of this rope can give all pieces of the pair \"" + demand.pair +
                          "\" of this boat"
                    : "no stock of this rope is of the lot \"" + demand.lot +
                          "\", and no one reel of an unknown lot can give all its pieces"};
    }
    Nanometres longest = 0;
    Nanometres longest_suitable = 0;
    bool stated = false;
    for (const std::size_t row : share_.stock) {
        stated = stated || (!demand.lot.empty() && question_.stock[row].lot == demand.lot);
    }
    for (const std::size_t row : share_.stock) {
        const Nanometres length = question_.stock[row].length.value_or(demand.length);
        longest = std::max(longest, length);
        if (suits(question_.stock[row], demand, stated)) {
            longest_suitable = std::max(longest_suitable, length);
        }
    }
    const std::string wanted = "a piece of " + metres_of(demand.length);
    if (longest < demand.length) {
        return {Code::piece_longer_than_reels, wanted +
                                                   " is longer than any reel of this rope; the "
                                                   "longest is " +
                                                   metres_of(longest)};
    }
    if (longest_suitable < demand.length) {
        const std::string what =
            demand.lot.empty() ? "colour \"" + demand.colour + '"' : "lot \"" + demand.lot + '"';
        return {demand.lot.empty() ? Code::stock_runs_out : Code::lot_cannot_hold,
                wanted + " is longer than any reel of this rope in the " + what};
    }
    return {Code::stock_runs_out, "the stock does not suffice for " + wanted +
                                      ", and nothing of this rope that would do can be ordered"};
}

} // namespace

ReelPlan cut_list(const ReelQuestion& question, const RopeShare& share, const RopeProblem& asked,
                  const StockPlan& plan) {
    return CutList(question, share, asked).write(plan);
}

} // namespace libsplice
