#include "libsplice/allowance/parts/bend_part.h"

#include "libsplice/mechanics/rope/bend.h"

#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::pair<double, FigureId>, 8> printed_ratios{
    std::pair{1.0, FigureId::bend_1}, {2.0, FigureId::bend_2},   {4.0, FigureId::bend_4},
    {6.0, FigureId::bend_6},          {10.0, FigureId::bend_10}, {15.0, FigureId::bend_15},
    {30.0, FigureId::bend_30},        {40.0, FigureId::bend_40}};

} // namespace

void add_bend(End& allowance, const Request& request) {
    const auto ratio = allowance.find(ValueName::bend_ratio);
    ShortList<BendPoint, printed_ratios.size()> points;
    CitationId source{};
    for (const auto& [printed, id] : printed_ratios) {
        if (const auto figure = request.rules.find(id)) {
            points.push_back({printed, figure->number()});
            source = figure->source;
        }
    }
    if (!ratio || points.empty()) {
        return;
    }
    if (const auto kept = retained_in_bend({points.begin(), points.end()}, *ratio)) {
        allowance.add(Value{ValueName::bend_retained, *kept});
    } else {
        allowance.add(Caution{"the pin of {pin} is thinner than any that is printed for this wire: "
                              "put a thimble in the eye",
                              source});
    }
}

} // namespace libsplice
