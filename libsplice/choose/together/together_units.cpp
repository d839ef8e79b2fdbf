// Lines of a pair are one unit, and a rope serves it that serves each of them.
#include "libsplice/choose/together/together_units.h"

#include "libsplice/cut/ropes/rope_words.h"
#include "libsplice/reel/rope_problem.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>

namespace libsplice {

namespace {

class UnitMaker {
  public:
    explicit UnitMaker(const TogetherQuestion& question) : question_(question) {
        for (const ReelStock& row : question.stock) {
            (row.priced ? priced_ : unpriced_).insert(row.rope);
        }
    }

    TogetherUnits make() {
        std::map<std::pair<std::string, std::string>, std::size_t> pairs;
        std::vector<std::vector<std::size_t>> groups;
        for (std::size_t l = 0; l < question_.lines.size(); ++l) {
            const LineChoice& line = question_.lines[l];
            const auto at =
                line.pair.empty()
                    ? pairs.end()
                    : pairs.emplace(std::pair(line.boat, line.pair), groups.size()).first;
            const std::size_t group = at == pairs.end() ? groups.size() : at->second;
            if (group == groups.size()) {
                groups.emplace_back();
            }
            groups[group].push_back(l);
        }
        for (const auto& lines : groups) {
            add_unit(lines);
        }
        return std::move(made_);
    }

  private:
    void add_unit(const std::vector<std::size_t>& lines) {
        const std::size_t before = made_.options.size();
        const LineChoice& first = question_.lines[lines.front()];
        for (std::size_t t = 0; t < first.rope_count(); ++t) {
            if (auto option = option_of(lines, first.rope_at(t))) {
                made_.options.push_back(*std::move(option));
            }
        }
        if (made_.options.size() > before) {
            ++made_.units;
        } else {
            made_.left_out.insert(made_.left_out.end(), lines.begin(), lines.end());
        }
    }

    [[nodiscard]] std::optional<UnitOption> option_of(const std::vector<std::size_t>& lines,
                                                      const TriedRope& rope) const {
        UnitOption option;
        option.unit = made_.units;
        for (const std::size_t line : lines) {
            const LineChoice& choice = question_.lines[line];
            std::optional<std::size_t> found;
            for (std::size_t t = 0; t < choice.rope_count() && !found; ++t) {
                const TriedRope& tried = choice.rope_at(t);
                if (one_name_of(*tried.rope) == one_name_of(*rope.rope) && serves(tried)) {
                    found = t;
                }
            }
            if (!found) {
                return std::nullopt;
            }
            option.members.emplace_back(line, *found);
            option.demands.push_back(demand_of(choice, choice.rope_at(*found)));
            if (!has_place(option.demands.back())) {
                return std::nullopt;
            }
        }
        return option;
    }

    /// Whether some reel can hold a piece. A piece of no stated lot, and no longer than every reel,
    /// is bought by the metre where the stock does not suit.
    [[nodiscard]] bool has_place(const Demand& demand) const {
        bool stocked = false;
        bool stated = false;
        for (const ReelStock& row : question_.stock) {
            stocked = stocked || row.rope == demand.rope;
            stated = stated || (row.rope == demand.rope && row.lot == demand.lot);
        }
        const auto holds = [&](const ReelStock& row) {
            return row.rope == demand.rope && suits(row, demand, stated) &&
                   (!row.length || *row.length >= demand.length);
        };
        return demand.lot.empty() || !stocked || std::ranges::any_of(question_.stock, holds);
    }

    /// It meets every need, and it is known what it costs.
    [[nodiscard]] bool serves(const TriedRope& tried) const {
        const std::string name = one_name_of(*tried.rope);
        return tried.shown_as != ShownAs::hybrid && !tried.verdict.fails && tried.verdict.buy &&
               !unpriced_.contains(name) && (priced_.contains(name) || tried.rope->price);
    }

    [[nodiscard]] static Demand demand_of(const LineChoice& line, const TriedRope& tried) {
        const Rope& rope = *tried.rope;
        Demand demand;
        demand.rope = one_name_of(rope);
        demand.length = *tried.verdict.buy / line.quantity;
        demand.count = line.quantity;
        demand.name = line.name;
        demand.boat = line.boat;
        demand.lot = line.lot;
        demand.colour = line.colour;
        demand.pair = line.pair;
        demand.title = title_with_size(rope, {});
        if (rope.price) {
            demand.per_metre = std::llround(rope.price->value * static_cast<double>(money_unit));
        }
        return demand;
    }

    const TogetherQuestion& question_;
    std::set<std::string> priced_;   ///< ropes of the stock
    std::set<std::string> unpriced_; ///< of which a row has no price
    TogetherUnits made_;
};

} // namespace

TogetherUnits units_of(const TogetherQuestion& question) {
    return UnitMaker(question).make();
}

} // namespace libsplice
