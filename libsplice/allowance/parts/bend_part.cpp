#include "libsplice/allowance/parts/bend_part.h"

#include "libsplice/mechanics/rope/bend.h"

#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::pair<double, FigureId>, 8> printed_ratios{
    std::pair{1.0, FigureId::bend_1}, {2.0, FigureId::bend_2},   {4.0, FigureId::bend_4},
    {6.0, FigureId::bend_6},          {10.0, FigureId::bend_10}, {15.0, FigureId::bend_15},
    {30.0, FigureId::bend_30},        {40.0, FigureId::bend_40}};

/// What the tables print for the rope, and where.
struct PrintedBends {
    ShortList<BendPoint, printed_ratios.size()> points;
    CitationId source{};
};

PrintedBends bends_of(const Rules& rules) {
    PrintedBends bends;
    for (const auto& [printed, id] : printed_ratios) {
        if (const auto* figure = rules.find(id)) {
            bends.points.push_back({printed, figure->number()});
            bends.source = figure->source;
        }
    }
    return bends;
}

} // namespace

std::optional<Retained> retained_over(const Rules& rules, double ratio) {
    const PrintedBends bends = bends_of(rules);
    const auto kept = retained_in_bend({bends.points.begin(), bends.points.end()}, ratio);
    return kept ? std::optional(Retained{*kept, bends.source}) : std::nullopt;
}

void add_bend(End& allowance, const Request& request) {
    const auto ratio = allowance.find(ValueName::bend_ratio);
    const PrintedBends bends = bends_of(request.rules);
    if (!ratio || bends.points.empty()) {
        return;
    }
    allowance.bend_retained = retained_over(request.rules, *ratio);
    if (allowance.bend_retained) {
        allowance.add(Value{ValueName::bend_retained, allowance.bend_retained->share});
    } else {
        allowance.add(Caution{"the pin of {pin} is thinner than any that is printed for this wire: "
                              "put a thimble in the eye",
                              bends.source});
    }
}

} // namespace libsplice
