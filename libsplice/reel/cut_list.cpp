// Gives the pieces of each pattern to lines in the order of the job, buys what the stock lacks, and
// adds up.
#include "libsplice/reel/cut_list.h"

#include "libsplice/reel/order_list.h"
#include "libsplice/reel/shortfall.h"

#include <gsl/assert>

#include <algorithm>
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
            add_what_lacks(item, plan.unplaced[item]);
        }
        const auto filling = minimum_orders(question_, share_.stock, made_.cuts);
        made_.cuts.insert(made_.cuts.end(), filling.begin(), filling.end());
        std::ranges::stable_sort(made_.cuts, {}, &ReelCut::stock);
        made_.order = order_list(question_, made_.cuts);
        made_.quality.value = plan.value[0] + bought_ + cost_of(filling);
        made_.quality.bound = plan.bound + bought_;
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
            cut.left_is = left_is(question_.stock[row], cut.left);
            made_.cuts.push_back(std::move(cut));
            done += times;
        }
    }

    /// A line that wants pieces of an item, and how many.
    struct Alike {
        std::size_t line = 0;
        std::int64_t times = 0;
    };
    /// The next line that wants a piece of the item, and how many of `count` it takes.
    Alike next_alike(std::size_t item, std::int64_t count) {
        const std::int64_t times = std::min(count, queues_[item].times_alike(1));
        std::vector<std::size_t> lines;
        queues_[item].take(1, times, lines);
        return {lines[0], times};
    }

    void add_by_the_metre(std::size_t row, const Alike& pieces) {
        made_.cuts.push_back({row,
                              pieces.times,
                              question_.demands[pieces.line].length,
                              0,
                              0,
                              LeftIs::nothing,
                              {{pieces.line, 0}}});
    }

    void add_loose(std::size_t item, std::int64_t count) {
        while (count > 0) {
            const Alike next = next_alike(item, count);
            add_by_the_metre(*asked_.loose_rows[item], next);
            count -= next.times;
        }
    }

    /// What the stock cannot give is bought by the metre, unless it must not be.
    void add_what_lacks(std::size_t item, std::int64_t count) {
        while (count > 0) {
            const Alike next = next_alike(item, count);
            count -= next.times;
            const Nanometres length = question_.demands[next.line].length;
            if (auto fault = refusal_of(question_, share_, asked_, item, next.line)) {
                made_.unplaced.push_back({next.line, next.times, *std::move(fault)});
                made_.unplaced_length += length * next.times;
                continue;
            }
            const std::size_t row = row_to_buy(question_.demands[next.line]);
            add_by_the_metre(row, next);
            made_.bought += length * next.times;
            if (question_.objective == Objective::cost) {
                bought_ += cost_to_buy(question_.stock[row], length) * next.times;
            }
        }
    }

    /// Where no price of the rope is known a metre counts as 1, as it does of its stock.
    [[nodiscard]] Money cost_to_buy(ReelStock row, Nanometres length) const {
        if (!is_priced(question_, share_)) {
            row.per_metre = money_unit;
        }
        return money_of(row, length);
    }

    [[nodiscard]] std::size_t row_to_buy(const Demand& demand) const {
        const auto row = std::ranges::find_if(share_.to_buy, [&](std::size_t candidate) {
            return question_.stock[candidate].colour == demand.colour;
        });
        Expects(row != share_.to_buy.end());
        return *row;
    }

    /// What minimum orders add to the value.
    [[nodiscard]] Amount cost_of(const std::vector<ReelCut>& filling) const {
        Amount cost = 0;
        for (const ReelCut& cut : filling) {
            if (question_.objective == Objective::cost) {
                cost += money_of(question_.stock[cut.stock], cut.length) * cut.times;
            } else if (question_.objective == Objective::waste && cut.left_is == LeftIs::waste) {
                cost += cut.length * cut.times;
            }
        }
        return cost;
    }

    void add_ledger() {
        RopeLedger ledger;
        ledger.rope = question_.demands[share_.demands.front()].rope;
        ledger.title = question_.demands[share_.demands.front()].title;
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
    Amount bought_ = 0; ///< what rope that the stock lacks costs
};

} // namespace

ReelPlan cut_list(const ReelQuestion& question, const RopeShare& share, const RopeProblem& asked,
                  const StockPlan& plan) {
    return CutList(question, share, asked).write(plan);
}

} // namespace libsplice
