// The programme chooses as if rope could be cut without waste; the planner of reels then says what
// that choice really costs, and the programme is told, until both agree or the time is up.
#include "libsplice/choose/together/together.h"

#include "libsplice/choose/together/together_programme.h"
#include "libsplice/choose/together/together_units.h"
#include "libsplice/reel/rope_problem.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <iterator>
#include <limits>
#include <map>
#include <set>
#include <utility>

namespace libsplice {

namespace {

/// What a choice costs in which a piece has no place.
constexpr double impossible = std::numeric_limits<double>::infinity();

/// A plan of one sort is as good as it is after so long.
constexpr std::chrono::milliseconds most_for_a_sort{200};

/// Less than this is the same money.
constexpr double same_money = 0.005;

constexpr Money impossible_money = std::numeric_limits<Money>::max();

double in_money(Money money) {
    if (money == impossible_money) {
        return impossible;
    }
    return static_cast<double>(money) / static_cast<double>(money_unit);
}

/// A choice, by its options, and what is known of its cost.
struct Found {
    std::vector<std::size_t> options;
    double cost = impossible;
    double bound = 0.0;
    std::size_t sorts = 0;

    [[nodiscard]] bool is_proved() const { return bound >= cost - same_money; }
};

class Puzzle {
  public:
    Puzzle(const TogetherQuestion& question, const SearchLimits& limits)
        : question_(question), limits_(limits), units_(units_of(question)) {
        asked_.units = units_.units;
        for (const UnitOption& option : units_.options) {
            asked_.options.push_back({option.unit, sort_of(option), metres_of(option)});
        }
    }

    [[nodiscard]] bool is_empty() const { return asked_.options.empty(); }

    std::optional<Together> solve_all() {
        constexpr int most_rounds = 200;
        Together together;
        Found best;
        const std::vector<std::size_t> alone = line_by_line();
        if (consider(alone, best)) {
            together.line_by_line = best.cost;
        }
        together.sorts_line_by_line = sorts_of(alone).size();
        bound(best, part_of_time(5));
        move(best);
        improve(best, most_rounds);
        if (best.options.empty()) {
            return std::nullopt;
        }
        together.cost = best.cost;
        together.proved = best.is_proved();
        together.bound = together.proved ? best.cost : best.bound;
        together.sorts = best.sorts;
        together.chosen = chosen_of(best.options);
        together.left_out = units_.left_out;
        add_fewer(best, together);
        return together;
    }

  private:
    /// So much of the time that is left.
    [[nodiscard]] SearchLimits part_of_time(int parts) const {
        SearchLimits limits = limits_;
        if (limits.deadline) {
            const auto now = std::chrono::steady_clock::now();
            limits.deadline = now + (*limits.deadline - now) / parts;
        }
        return limits;
    }

    /// The programme's choice that could be cheaper; what it cannot be under is kept.
    RelaxedChoice bound(Found& best, const SearchLimits& limits) const {
        RelaxedChoice relaxed = solve(asked_, best.cost + same_money, limits);
        best.bound = std::max(best.bound, std::min(relaxed.bound, best.cost));
        return relaxed;
    }

    /// The programme's choice, planned, until it cannot be beaten.
    void improve(Found& best, int rounds) {
        for (int round = 0; round < rounds && !limits_.reached(); ++round) {
            const RelaxedChoice relaxed = bound(best, part_of_time(3));
            if (!relaxed.options || (!best.options.empty() && best.is_proved())) {
                break;
            }
            const std::size_t known = asked_.known.size();
            learn_all(*relaxed.options);
            const bool better = consider(*relaxed.options, best);
            if (better) {
                move(best);
            }
            if (best.is_proved() || (!better && asked_.known.size() == known)) {
                break; // the programme knows no more than before
            }
        }
    }

    /// Moves what is cut from one sort to another, all of it or a unit of it, as long as that makes
    /// the choice cheaper.
    void move(Found& best) {
        const SearchLimits limits = part_of_time(2); // the rest is for the programme
        bool moved = !best.options.empty();
        while (moved && !limits.reached()) {
            moved = false;
            for (const std::size_t from : sorts_of(best.options)) {
                for (std::size_t to = 0; to < asked_.sorts.size(); ++to) {
                    moved =
                        (to != from && consider(moved_all(best.options, from, to), best)) || moved;
                }
            }
            for (std::size_t o = 0; o < asked_.options.size() && !limits.reached(); ++o) {
                std::vector<std::size_t> options = best.options;
                options[asked_.options[o].unit] = o;
                moved = consider(options, best) || moved;
            }
        }
    }

    /// The options with all units of a sort that another can serve in that.
    [[nodiscard]] std::vector<std::size_t> moved_all(std::vector<std::size_t> options,
                                                     std::size_t from, std::size_t to) const {
        for (std::size_t o = 0; o < asked_.options.size(); ++o) {
            std::size_t& taken = options[asked_.options[o].unit];
            if (asked_.options[o].sort == to && asked_.options[taken].sort == from) {
                taken = o;
            }
        }
        return options;
    }

    /// Plans a choice, and keeps it if it is cheaper, or as cheap with fewer sorts.
    bool consider(const std::vector<std::size_t>& options, Found& best) {
        const double cost = plan(options);
        const std::size_t sorts = sorts_of(options).size();
        const bool cheaper = cost < best.cost - same_money;
        if (!cheaper && !(cost < best.cost + same_money && sorts < best.sorts)) {
            return false;
        }
        best.options = options;
        best.cost = cost;
        best.sorts = sorts;
        return true;
    }

    /// What fewer sorts cost, one less after the other.
    void add_fewer(const Found& best, Together& together) {
        constexpr int most_rounds = 8;
        for (std::size_t most = best.sorts; most-- > 1 && !limits_.reached();) {
            asked_.most_sorts = most;
            Found fewer;
            fewer.sorts = most + 1;
            const RelaxedChoice relaxed = solve(asked_, impossible, limits_);
            if (!relaxed.options) {
                break; // no line could have a rope
            }
            consider(*relaxed.options, fewer);
            improve(fewer, most_rounds);
            if (fewer.options.empty()) {
                break;
            }
            std::vector<std::string> ropes;
            for (const std::size_t sort : sorts_of(fewer.options)) {
                ropes.push_back(sort_titles_[sort]);
            }
            together.fewer.push_back({fewer.sorts, fewer.cost, std::move(ropes)});
            most = std::min(most, fewer.sorts);
        }
        asked_.most_sorts.reset();
    }

    std::size_t sort_of(const UnitOption& option) {
        const auto [at, is_new] = sorts_.emplace(option.demands.front().rope, asked_.sorts.size());
        if (!is_new) {
            return at->second;
        }
        sort_titles_.push_back(option.demands.front().title);
        RopeSort sort;
        bool covers_all = false;
        for (const ReelStock& row : question_.stock) {
            if (row.rope == at->first && !row.by_the_metre()) {
                const double rate =
                    row.kind == StockKind::offcut ? ReelQuestion{}.offcut_rate : 1.0;
                sort.reels.push_back({from_nanometres(*row.length).si(),
                                      in_money(money_of(row, *row.length)) * rate, row.count});
                covers_all = covers_all || (!row.count && suits_all(row));
            }
        }
        if (!covers_all) {
            sort.per_metre = least_per_metre(at->first, option.demands.front());
        }
        asked_.sorts.push_back(std::move(sort));
        return at->second;
    }

    /// Whether every piece that might be of the row's rope can come from it, so that nothing is
    /// bought by the metre for what the stock lacks.
    [[nodiscard]] bool suits_all(const ReelStock& row) const {
        return std::ranges::all_of(units_.options, [&](const UnitOption& option) {
            return std::ranges::all_of(option.demands, [&](const Demand& demand) {
                return demand.rope != row.rope ||
                       (demand.length <= *row.length && demand.lot.empty() && demand.pair.empty() &&
                        suits(row, demand, false));
            });
        });
    }

    /// The least that a metre may cost, on whichever row of the stock.
    [[nodiscard]] double least_per_metre(const std::string& rope, const Demand& demand) const {
        double least = std::numeric_limits<double>::infinity();
        for (const ReelStock& row : question_.stock) {
            if (row.rope == rope) {
                const Nanometres length = row.length.value_or(nanometres_per_metre);
                least =
                    std::min(least, in_money(money_of(row, length)) / from_nanometres(length).si());
            }
        }
        return demand.per_metre ? std::min(least, in_money(*demand.per_metre)) : least;
    }

    [[nodiscard]] static double metres_of(const UnitOption& option) {
        double sum = 0.0;
        for (const Demand& demand : option.demands) {
            sum += from_nanometres(demand.length).si() * static_cast<double>(demand.count);
        }
        return sum;
    }

    /// The lines' own choices; the first option of a unit whose choice has no price.
    [[nodiscard]] std::vector<std::size_t> line_by_line() const {
        std::vector<std::optional<std::size_t>> chosen(units_.units);
        for (std::size_t o = 0; o < units_.options.size(); ++o) {
            const UnitOption& option = units_.options[o];
            auto& taken = chosen[option.unit];
            const auto& [line, tried] = option.members.front();
            if (!taken || question_.lines[line].chosen == tried) {
                taken = o;
            }
        }
        std::vector<std::size_t> options(chosen.size());
        std::ranges::transform(chosen, options.begin(),
                               [](const auto& option) { return option.value_or(0); });
        return options;
    }

    [[nodiscard]] std::set<std::size_t> sorts_of(const std::vector<std::size_t>& options) const {
        std::set<std::size_t> sorts;
        for (const std::size_t option : options) {
            sorts.insert(asked_.options[option].sort);
        }
        return sorts;
    }

    [[nodiscard]] std::vector<std::optional<std::size_t>>
    chosen_of(const std::vector<std::size_t>& options) const {
        std::vector<std::optional<std::size_t>> chosen(question_.lines.size());
        for (const std::size_t option : options) {
            for (const auto& [line, tried] : units_.options[option].members) {
                chosen[line] = tried;
            }
        }
        return chosen;
    }

    [[nodiscard]] std::map<std::size_t, std::vector<std::size_t>>
    by_sort(std::vector<std::size_t> options) const {
        std::ranges::sort(options);
        std::map<std::size_t, std::vector<std::size_t>> parts;
        for (const std::size_t option : options) {
            parts[asked_.options[option].sort].push_back(option);
        }
        return parts;
    }

    /// What a choice really costs, sort by sort.
    double plan(const std::vector<std::size_t>& options) {
        double cost = 0.0;
        for (const auto& part : by_sort(options)) {
            cost += in_money(planned(part.second).value);
        }
        return cost;
    }

    /// What options of one sort cost, each set of them worked out once.
    const Quality& planned(const std::vector<std::size_t>& own) {
        const auto [at, is_new] = planned_.try_emplace(own);
        if (is_new) {
            at->second = plan_sort(own);
        }
        return at->second;
    }

    /// Tells the programme what a choice costs, sort by sort.
    void learn_all(const std::vector<std::size_t>& options) {
        for (const auto& [sort, own] : by_sort(options)) {
            if (learnt_.insert(own).second) {
                learn(sort, own, in_money(planned(own).bound));
            }
        }
    }

    /// Tells the programme what options cost together, and which few of them are to blame.
    void learn(std::size_t sort, const std::vector<std::size_t>& own, double bound) {
        constexpr std::size_t most_shrunk = 30;
        constexpr double nearly = 0.95;
        asked_.known.push_back({sort, own, bound});
        if (own.size() < 2 || own.size() > most_shrunk) {
            return;
        }
        std::vector<std::size_t> core = own;
        double known = bound;
        for (const std::size_t option : own) {
            std::vector<std::size_t> fewer = core;
            std::erase(fewer, option);
            if (fewer.empty() || limits_.reached()) {
                break;
            }
            const double cost = in_money(planned(fewer).bound);
            if (cost >= nearly * bound) {
                core = std::move(fewer);
                known = cost;
            }
        }
        if (core.size() < own.size()) {
            asked_.known.push_back({sort, core, known});
        }
    }

    /// What the pieces of these options cost; impossible if one of them has no place.
    [[nodiscard]] Quality plan_sort(const std::vector<std::size_t>& own) const {
        ReelQuestion question;
        question.cut_loss = question_.cut_loss;
        for (const std::size_t option : own) {
            std::ranges::copy(units_.options[option].demands, std::back_inserter(question.demands));
        }
        const std::string& rope = question.demands.front().rope;
        std::ranges::copy_if(question_.stock, std::back_inserter(question.stock),
                             [&](const ReelStock& row) { return row.rope == rope; });
        SearchLimits limits = limits_;
        limits.on_progress = {};
        // One sort must not take the time of all.
        const auto soon = std::chrono::steady_clock::now() + most_for_a_sort;
        limits.deadline = limits.deadline ? std::min(*limits.deadline, soon) : soon;
        const ReelPlan plan = plan_reels(question, limits);
        return plan.unplaced.empty() ? plan.quality : Quality{impossible_money, impossible_money};
    }

    const TogetherQuestion& question_;
    const SearchLimits& limits_;
    TogetherUnits units_;
    TogetherProgramme asked_;
    std::map<std::string, std::size_t> sorts_; ///< by the rope's one name
    std::vector<std::string> sort_titles_;
    std::set<std::vector<std::size_t>> learnt_;           ///< of which the programme knows
    std::map<std::vector<std::size_t>, Quality> planned_; ///< what options of one sort cost
};

} // namespace

std::optional<Together> choose_together(const TogetherQuestion& question,
                                        const SearchLimits& limits) {
    Puzzle puzzle(question, limits);
    return puzzle.is_empty() ? std::nullopt : puzzle.solve_all();
}

} // namespace libsplice
