// Asks the programme of everything in whole numbers, and cuts the patterns that it chooses.
#include "libsplice/reel/solver/search/whole_patterns.h"

#include "libsplice/reel/solver/search/part_plan.h"

#include <cmath>

namespace libsplice {

std::optional<StockPlan> whole_patterns(const DiveTools& tools) {
    constexpr std::size_t most_items = 100; // beyond, dives and smaller parts do better
    if (tools.best.ended() || tools.problem.items.size() > most_items) {
        return std::nullopt;
    }
    const GoalUnits& units = tools.units;
    const PatternQuestion question = whole_question(tools.problem, tools.best.plan().value);
    tools.programme.ask(question);
    Master::WholeSearch search;
    search.under = units.scaled(tools.best.value()) - 0.5 * units.scaled(units.step);
    search.enough = units.goal == 0 ? units.scaled(tools.best.bound()) + 1e-9 : 1e-9;
    search.most_nodes = 300;
    search.deadline = tools.limits.deadline;
    search.stop = tools.limits.stop;
    const auto whole = tools.programme.solve_whole(search);
    if (!whole) {
        return std::nullopt;
    }
    PartPlan part(tools.problem, question.remaining.stocks);
    for (std::size_t i = 0; i < whole->loose.size(); ++i) {
        part.take_loose(i, std::llround(whole->loose[i]));
    }
    for (std::size_t c = 0; c < whole->times.size(); ++c) {
        part.cut(tools.pool.columns()[c], std::llround(whole->times[c]));
    }
    return part.finished();
}

} // namespace libsplice
