// A loop knot: an eye without a throat of its own, the rope in the knot, and what is left.
#include "libsplice/allowance/parts/loop_part.h"

namespace libsplice {

namespace {

/// The rows of an eye, under the names that they have in a loop.
void add_loop_rows(End& allowance, const EyePart& loop) {
    add_eye_rows(allowance, loop);
    for (Row& row : allowance.rows) {
        row.item = row.item == Item::eye_legs            ? Item::loop_legs
                   : row.item == Item::throat_to_bearing ? Item::knot_to_bearing
                                                         : row.item;
    }
}

void add_loop_marks(End& allowance, const EyePart& loop, Nanometres near, Nanometres beyond) {
    add_eye_marks(allowance, loop, near, {MarkName::loop_near, MarkName::loop_far});
    if (beyond > 0) {
        allowance.standing_mark += beyond;
        allowance.add(Mark{MarkName::knot_standing, allowance.standing_mark});
    }
}

} // namespace

Result<End> lay_loop(const Request& request, LoopFields fields, LoopShape shape, Steps steps) {
    const Length rope = request.rope.counting_diameter();
    auto loop = read_eye(request, {fields.loop, fields.pin}, rope);
    if (!loop) {
        auto fault = loop.error();
        fault.field = "loop";
        return Unexpected(std::move(fault));
    }
    const auto beyond_loop = request.rules.need(FigureId::beyond_loop);
    const auto tail = field_or_figure(request, fields.tail, FigureId::tail, rope);
    if (!beyond_loop || !tail) {
        return Unexpected(beyond_loop ? tail.error() : beyond_loop.error());
    }
    const auto in_knot = from_figure(*beyond_loop, rope);

    End allowance;
    add_loop_rows(allowance, *loop);
    allowance.add(row_of(Item::knot, in_knot, Group::hand));
    allowance.add(row_of(Item::tail, *tail));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres far_side = tail_end + to_nanometres(tail->length);
    const Nanometres all = to_nanometres(in_knot.length);
    const Nanometres beyond = shape.lies == KnotLies::both_sides ? all / 2 : 0;
    const Nanometres near = far_side + all - beyond;
    add_loop_marks(allowance, *loop, near, beyond);
    allowance.add(Value{ValueName::knot_m, in_knot.length.si()});
    allowance.add(Value{ValueName::tail_m, tail->length.si()});
    add_eye_facts(allowance, *loop, request, near);
    allowance.add(Span{shape.form, far_side, near, to_nanometres(rope), shape.count});
    add_slip_caution(allowance, request);
    add_retained(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace libsplice
