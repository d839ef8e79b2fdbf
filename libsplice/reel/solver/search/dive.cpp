// Fixes what the programme uses in whole numbers, else what it uses most, and asks again.
#include "libsplice/reel/solver/search/dive.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace libsplice {

namespace {

/// Less than this is nothing: what the linear programme's rounding leaves.
constexpr double epsilon = 1e-6;

class Dive {
  public:
    Dive(const DiveTools& tools, std::vector<std::int64_t> stocks, bool first,
         std::minstd_rand& random)
        : tools_(tools), first_(first), random_(random), part_(tools.problem, std::move(stocks)) {}

    std::optional<StockPlan> run() {
        while (part_.pieces_left() > 0) {
            const auto answer = ask();
            if (!answer || is_hopeless(*answer) || !fix_some(*answer)) {
                break;
            }
        }
        return part_.finished();
    }

  private:
    std::optional<PatternAnswer> ask() {
        constexpr int most_rounds = 40;
        constexpr int most_rounds_at_first = 1000;
        PatternQuestion question{part_.remaining(), {{}, part_.remaining().stocks}, {}};
        for (std::size_t g = 0; g < tools_.units.goal; ++g) {
            question.room[g] = tools_.best.plan().value[g] - part_.spent()[g];
        }
        tools_.generation.complete(question,
                                   first_ && !part_.started() ? most_rounds_at_first : most_rounds);
        return tools_.limits.reached() ? std::nullopt : tools_.programme.solve();
    }

    /// Whether nothing better can come of it: a piece is missing, or it costs too much already.
    [[nodiscard]] bool is_hopeless(const PatternAnswer& answer) const {
        const GoalUnits& units = tools_.units;
        if (std::ranges::any_of(answer.missing, [](double count) { return count > epsilon; })) {
            return true;
        }
        const double least = units.scaled(part_.spent()[units.goal]) + answer.cost;
        const double wanted = units.scaled(tools_.best.value() - units.step);
        return least > wanted + epsilon * std::max(1.0, wanted);
    }

    struct Used {
        double value;
        std::size_t column;
    };

    /// False if the programme uses nothing.
    bool fix_some(const PatternAnswer& answer) {
        bool fixed = false;
        for (std::size_t i = 0; i < answer.loose.size(); ++i) {
            const auto whole = static_cast<std::int64_t>(answer.loose[i] + epsilon);
            fixed = part_.take_loose(i, whole) > 0 || fixed;
        }
        std::vector<Used> used;
        for (std::size_t c = 0; c < answer.times.size(); ++c) {
            if (answer.times[c] > epsilon) {
                used.push_back({answer.times[c], c});
            }
        }
        std::ranges::stable_sort(used, std::ranges::greater(), &Used::value);
        for (const auto& [value, column] : used) {
            const auto whole = static_cast<std::int64_t>(value + epsilon);
            fixed = (whole > 0 && fix(column, whole)) || fixed;
        }
        if (!fixed) {
            fix_by_chance(used);
        }
        return fixed || !used.empty();
    }

    bool fix(std::size_t column, std::int64_t times) {
        const Column& pattern = tools_.pool.columns()[column];
        return part_.cut(pattern, std::min(times, room_for(part_.remaining(), pattern)));
    }

    /// Later dives take another one of the first few; large remainders take several at once.
    void fix_by_chance(std::vector<Used>& used) {
        if (used.empty()) {
            return;
        }
        const std::size_t choices = std::min<std::size_t>(used.size(), first_ ? 1 : 3);
        std::swap(used[0], used[random_() % choices]);
        const std::size_t several = 1 + static_cast<std::size_t>(part_.pieces_left() / 100);
        for (std::size_t k = 0; k < std::min(several, used.size()); ++k) {
            if (k > 0 && used[k].value < 0.5) {
                break;
            }
            fix(used[k].column, 1);
        }
    }

    const DiveTools& tools_;
    bool first_;
    std::minstd_rand& random_;
    PartPlan part_;
};

} // namespace

std::optional<StockPlan> dive(const DiveTools& tools, std::vector<std::int64_t> stocks, bool first,
                              std::minstd_rand& random) {
    return Dive(tools, std::move(stocks), first, random).run();
}

} // namespace libsplice
