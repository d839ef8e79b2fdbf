// What the crossing of a clove hitch holds by friction, and how many turns more would.
#include "libsplice/allowance/kinds/knots/clove_margin.h"

#include "libsplice/mechanics/rope/hitch.h"

#include <cmath>

namespace libsplice {

namespace {

constexpr double own_turns = 2.0;

} // namespace

std::optional<Fault> needs_stitching(const Request& request) {
    const auto slip = request.rules.find(FigureId::slip);
    if (slip == nullptr) {
        return std::nullopt;
    }
    Fault fault{Code::field_missing, "a clove hitch slips in bare HMPE: stitch its tail and say "
                                     "stitched = yes, or splice the end"};
    fault.field = "stitched";
    fault.rule = to_text(request.citations.at(slip->source));
    return fault;
}

void add_clove_margin(End& allowance, const Request& request, const HitchPart& hitch,
                      bool is_stitched) {
    const auto friction = request.rules.find(FigureId::friction);
    if (friction == nullptr) {
        return;
    }
    const double coefficient = friction->number();
    const double margin = clove_hitch_margin(hitch.turn.around, request.rope.counting_diameter(),
                                             coefficient, coefficient) /
                          load_past(hitch.turns - own_turns, coefficient);
    allowance.turns->margin = margin;
    if (margin >= 1.0 || is_stitched) {
        return;
    }
    allowance.turns->extra = std::ceil(turns_to_hold(1.0 / margin, coefficient));
    allowance.add(
        Caution{"friction alone does not hold this clove hitch (margin {hitch_margin}, below 1): "
                "finish it with half hitches; turns more that would hold: {extra_turns}",
                friction->source});
}

} // namespace libsplice
