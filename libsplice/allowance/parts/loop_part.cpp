// A loop knot: an eye without a throat of its own, the rope in the knot, and what is left.
#include "libsplice/allowance/parts/loop_part.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr EyeWords loop_words{Item::loop_legs, Item::knot_to_bearing, MarkName::loop_near,
                              MarkName::loop_far, "loop"};

/// How much of the knot's rope lies on the standing side of the loop.
Nanometres on_standing_side(Figures& need, KnotLies lies, Nanometres knot, Length diameter) {
    switch (lies) {
    case KnotLies::tail_side:
        return 0;
    case KnotLies::both_sides:
        return knot / 2;
    case KnotLies::turned_in_standing_part:
        break;
    }
    const SourcedLength turns = need.length(FigureId::standing_side, diameter);
    return std::min(to_nanometres(turns.length), knot);
}

} // namespace

Result<End> lay_loop(const Request& request, LoopFields fields, LoopShape shape, Steps steps) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto loop = need.part(read_eye(request, {fields.loop, fields.pin}, diameter, loop_words));
    const auto in_knot = need.length(FigureId::beyond_loop, diameter);
    const auto tail = need.field_or(fields.tail, FigureId::tail, diameter);
    const Nanometres all = to_nanometres(in_knot.length);
    const Nanometres beyond = on_standing_side(need, shape.lies, all, diameter);
    if (need.failed()) {
        return need.fault();
    }
    End allowance;
    add_eye_rows(allowance, loop);
    allowance.add(row_of(Item::knot, in_knot, Group::hand));
    allowance.add(row_of(Item::tail, tail));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres far_side = tail_end + to_nanometres(tail.length);
    const Nanometres near = far_side + all - beyond;
    lay_eye(allowance, loop, request, near);
    if (beyond > 0) {
        allowance.standing_mark += beyond;
        allowance.add(Mark{MarkName::knot_standing, allowance.standing_mark});
    }
    allowance.knot = KnotFacts{in_knot.length, {}, tail.length};
    allowance.add(Span{shape.form, far_side, near, to_nanometres(diameter), shape.count});
    add_slip_caution(allowance, request);
    add_retained(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace libsplice
