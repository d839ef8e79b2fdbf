// The programme chooses as if rope could be cut without waste; the planner of reels then says what
// that choice really costs, and the programme is told, until both agree or the time is up.
#include "libsplice/choose/together.h"

#include "libsplice/choose/together_programme.h"
#include "libsplice/reel/rope_problem.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace libsplice {

namespace {

/// Less than this is the same money.
constexpr double same_money = 0.005;

double in_money(Money money) {
    return static_cast<double>(money) / static_cast<double>(money_unit);
}

class Puzzle {
  public:
    Puzzle(const TogetherQuestion& question, const SearchLimits& limits)
        : question_(question), limits_(limits) {
        asked_.lines = question.lines.size();
        for (std::size_t l = 0; l < question.lines.size(); ++l) {
            const LineChoice& line = question.lines[l];
            for (std::size_t t = 0; t < line.ropes.size(); ++t) {
                const TriedRope& rope = line.ropes[t];
                if (!rope.verdict.fails && rope.verdict.price && rope.verdict.buy) {
                    asked_.options.push_back(
                        {l, t, sort_of(rope), from_nanometres(*rope.verdict.buy).si()});
                }
            }
        }
    }

    [[nodiscard]] bool is_empty() const { return asked_.options.empty(); }

    Together solve_all() {
        constexpr int most_rounds = 60;
        Together best;
        const std::vector<std::size_t> by_line = line_by_line();
        best.line_by_line = plan(by_line);
        take(by_line, best.line_by_line, best);
        for (int round = 0; round < most_rounds && !limits_.reached(); ++round) {
            const RelaxedChoice relaxed = solve(asked_, best.cost, limits_);
            best.bound = std::max(best.bound, std::min(relaxed.bound, best.cost));
            if (!relaxed.options) {
                break;
            }
            const double cost = plan(*relaxed.options);
            const bool cheaper = cost < best.cost - same_money;
            if (cheaper ||
                (cost < best.cost + same_money && sorts_of(*relaxed.options) < best.sorts)) {
                take(*relaxed.options, std::min(cost, best.cost), best);
            }
            if (best.bound >= best.cost - same_money) {
                break;
            }
        }
        best.proved = best.bound >= best.cost - same_money;
        best.bound = best.proved ? best.cost : best.bound;
        return best;
    }

  private:
    std::size_t sort_of(const TriedRope& rope) {
        const auto [at, is_new] = sort_by_candidate_.emplace(rope.candidate, asked_.sorts.size());
        if (!is_new) {
            return at->second;
        }
        RopeSort sort;
        sort.per_metre = rope.rope->price ? rope.rope->price->value : 0.0;
        candidates_.push_back(rope.candidate);
        for (const ReelStock& row : question_.stock) {
            if (row.rope != rope.rope->id) {
                continue;
            }
            const double rate = row.kind == StockKind::offcut ? ReelQuestion{}.offcut_rate : 1.0;
            const Nanometres length = row.length.value_or(nanometres_per_metre / 1000);
            sort.reels.push_back({from_nanometres(length).si(),
                                  in_money(money_of(row, length)) * rate,
                                  row.length ? row.count : std::nullopt});
        }
        asked_.sorts.push_back(std::move(sort));
        return at->second;
    }

    /// The line's own choice where it has a price, else the first rope that has one.
    [[nodiscard]] std::vector<std::size_t> line_by_line() const {
        std::vector<std::size_t> chosen;
        for (std::size_t o = 0; o < asked_.options.size(); ++o) {
            const RopeOption& option = asked_.options[o];
            const bool is_first =
                chosen.empty() || asked_.options[chosen.back()].line != option.line;
            if (is_first) {
                chosen.push_back(o);
            } else if (question_.lines[option.line].chosen == option.tried) {
                chosen.back() = o;
            }
        }
        return chosen;
    }

    [[nodiscard]] std::size_t sorts_of(const std::vector<std::size_t>& options) const {
        std::set<std::size_t> sorts;
        for (const std::size_t option : options) {
            sorts.insert(asked_.options[option].sort);
        }
        return sorts.size();
    }

    void take(const std::vector<std::size_t>& options, double cost, Together& best) const {
        best.cost = cost;
        best.sorts = sorts_of(options);
        best.chosen.assign(question_.lines.size(), std::nullopt);
        for (const std::size_t option : options) {
            best.chosen[asked_.options[option].line] = asked_.options[option].tried;
        }
    }

    /// What a choice really costs, sort by sort; the bound of each is kept for the programme.
    double plan(const std::vector<std::size_t>& options) {
        std::map<std::size_t, std::vector<std::size_t>> by_sort;
        for (const std::size_t option : options) {
            by_sort[asked_.options[option].sort].push_back(option);
        }
        double cost = 0.0;
        for (const auto& [sort, own] : by_sort) {
            const auto [at, is_new] = planned_.emplace(own, 0.0);
            if (is_new) {
                const Quality quality = plan_sort(sort, own);
                at->second = in_money(quality.value);
                asked_.known.push_back({sort, own, in_money(quality.bound)});
            }
            cost += at->second;
        }
        return cost;
    }

    [[nodiscard]] Quality plan_sort(std::size_t sort, const std::vector<std::size_t>& own) const {
        const Rope& rope = *question_.candidates.at(candidates_[sort]).rope;
        ReelQuestion question;
        for (const std::size_t option : own) {
            const RopeOption& taken = asked_.options[option];
            const LineChoice& line = question_.lines[taken.line];
            Demand demand;
            demand.rope = rope.id;
            demand.length = *line.ropes[taken.tried].verdict.buy / line.quantity;
            demand.count = line.quantity;
            demand.name = line.name;
            demand.per_metre =
                std::llround(asked_.sorts[sort].per_metre * static_cast<double>(money_unit));
            question.demands.push_back(std::move(demand));
        }
        std::ranges::copy_if(question_.stock, std::back_inserter(question.stock),
                             [&](const ReelStock& row) { return row.rope == rope.id; });
        return plan_reels(question, limits_).quality;
    }

    const TogetherQuestion& question_;
    const SearchLimits& limits_;
    TogetherProgramme asked_;
    std::vector<std::size_t> candidates_; ///< by sort
    std::map<std::size_t, std::size_t> sort_by_candidate_;
    std::map<std::vector<std::size_t>, double> planned_; ///< what options of one sort cost
};

} // namespace

std::optional<Together> choose_together(const TogetherQuestion& question,
                                        const SearchLimits& limits) {
    Puzzle puzzle(question, limits);
    return puzzle.is_empty() ? std::nullopt : std::optional(puzzle.solve_all());
}

} // namespace libsplice
