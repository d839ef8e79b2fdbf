// Draws a few stocks of the plan, plans their pieces anew as a small problem, and puts the
// better plan back.
#include "libsplice/reel/solver/improve.h"

#include "libsplice/reel/solver/patterns/column_pool.h"
#include "libsplice/reel/solver/search/goal_search.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace libsplice {

namespace {

/// The stocks that are taken out, one each, and the plan without them.
struct Split {
    std::vector<Pattern> kept;
    std::vector<Pattern> taken;
};

/// A number that is lower the more is left over, and otherwise as chance has it.
double lot_of(const StockProblem& problem, const Pattern& pattern, std::minstd_rand& random) {
    const double chance = (static_cast<double>(random() % 100'000) + 1.0) / 100'001.0;
    const double left = static_cast<double>(left_of(problem, pattern)) /
                        static_cast<double>(problem.stocks[pattern.stock].length);
    return -std::log(chance) / (0.02 + left);
}

Split split(const StockProblem& problem, const StockPlan& plan, std::size_t pieces,
            std::minstd_rand& random) {
    struct Drawn {
        double lot;
        std::size_t pattern;
    };
    constexpr std::int64_t most_alike = 4;
    std::vector<Drawn> drawn;
    for (std::size_t p = 0; p < plan.patterns.size(); ++p) {
        const std::int64_t alike = std::min(plan.patterns[p].times, most_alike);
        for (std::int64_t k = 0; k < alike; ++k) {
            drawn.push_back({lot_of(problem, plan.patterns[p], random), p});
        }
    }
    std::ranges::stable_sort(drawn, {}, &Drawn::lot);
    Split split{plan.patterns, {}};
    std::size_t count = 0;
    for (const Drawn& one : drawn) {
        if (count >= pieces) {
            break;
        }
        --split.kept[one.pattern].times;
        Pattern& taken = split.taken.emplace_back(split.kept[one.pattern]);
        taken.times = 1;
        for (const Take& take : taken.takes) {
            count += static_cast<std::size_t>(take.count);
        }
    }
    std::erase_if(split.kept, [](const Pattern& pattern) { return pattern.times == 0; });
    return split;
}

/// The small problem, its items numbered anew.
struct Part {
    StockProblem problem;
    StockPlan plan;
    std::vector<std::uint32_t> items; ///< by item of the part: that of the whole
};

Part part_of(const StockProblem& whole, const StockPlan& plan, const Split& split) {
    Part part;
    part.problem.cut_loss = whole.cut_loss;
    part.problem.goals = whole.goals;
    part.problem.stocks = whole.stocks;
    for (const Pattern& pattern : split.kept) {
        std::int64_t& available = part.problem.stocks[pattern.stock].available;
        available = available < no_limit ? available - pattern.times : no_limit;
    }
    std::map<std::uint32_t, std::uint32_t> numbers;
    const auto number = [&](std::uint32_t item) {
        const auto [at, is_new] =
            numbers.emplace(item, static_cast<std::uint32_t>(part.items.size()));
        if (is_new) {
            part.items.push_back(item);
            part.problem.items.push_back(whole.items[item]);
            part.problem.items.back().count = plan.loose[item];
            part.plan.loose.push_back(plan.loose[item]);
            part.plan.unplaced.push_back(0);
        }
        return at->second;
    };
    for (std::uint32_t item = 0; item < plan.loose.size(); ++item) {
        if (plan.loose[item] > 0) {
            number(item);
        }
    }
    for (Pattern pattern : split.taken) {
        for (Take& take : pattern.takes) {
            take.item = number(take.item);
            part.problem.items[take.item].count += take.count;
        }
        std::ranges::sort(pattern.takes, {}, &Take::item);
        part.plan.patterns.push_back(std::move(pattern));
    }
    part.plan.value = price_of(part.problem, part.plan);
    return part;
}

/// The whole plan again, with the part's new one in it.
StockPlan joined(const StockPlan& plan, const Split& split, Part part) {
    StockPlan whole = plan;
    whole.patterns = split.kept;
    for (Pattern& pattern : part.plan.patterns) {
        for (Take& take : pattern.takes) {
            take.item = part.items[take.item];
        }
        std::ranges::sort(pattern.takes, {}, &Take::item);
        const auto same = std::ranges::find_if(whole.patterns, [&](const Pattern& known) {
            return known.stock == pattern.stock && known.takes == pattern.takes;
        });
        if (same == whole.patterns.end()) {
            whole.patterns.push_back(std::move(pattern));
        } else {
            same->times += pattern.times;
        }
    }
    for (std::size_t i = 0; i < part.items.size(); ++i) {
        whole.loose[part.items[i]] = part.plan.loose[i];
    }
    return whole;
}

} // namespace

bool improve_part(const StockProblem& problem, std::size_t goal, StockPlan& plan,
                  const SearchLimits& limits, std::size_t pieces, std::minstd_rand& random) {
    const Split taken = split(problem, plan, pieces, random);
    Part part = part_of(problem, plan, taken);
    ColumnPool pool(part.problem);
    for (const Pattern& pattern : part.plan.patterns) {
        pool.add(pattern.stock, pattern.takes);
    }
    const Goals before = part.plan.value;
    SearchLimits quiet = limits;
    quiet.on_progress = nullptr;
    GoalSearch(part.problem, pool, goal, part.plan, quiet).run(1);
    if (!(part.plan.value < before)) {
        return false;
    }
    StockPlan better = joined(plan, taken, std::move(part));
    better.value = price_of(problem, better);
    plan = std::move(better);
    return true;
}

} // namespace libsplice
