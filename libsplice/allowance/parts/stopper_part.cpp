// A stopper: the rope beyond its face, from the tables, the hand and the job.
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

/// The tight length times the hand's factor; the factor's spread is the knot's.
Result<SourcedLength> rope_in_knot(const Request& request, std::size_t field) {
    const auto tight = request.rules.need(FigureId::knot);
    const auto usual = request.rules.need(FigureId::set);
    if (!tight || !usual) {
        return Unexpected(tight ? usual.error() : tight.error());
    }
    const Length tightest = tight->length(request.rope.counting_diameter());
    const double factor = request.fields.has(field) ? request.fields.at(field) : usual->number();
    return SourcedLength{tightest * factor, tightest * usual->number_spread(), usual->origin,
                         tight->source};
}

} // namespace

Result<StopperPart> read_stopper(const Request& request, StopperFields fields) {
    const Length rope = request.rope.counting_diameter();
    const auto knot = rope_in_knot(request, fields.set);
    if (!knot) {
        return Unexpected(knot.error());
    }
    const auto body = request.rules.need(FigureId::body);
    const auto tail = field_or_figure(request, fields.beyond, fields.beyond_is.figure, rope);
    if (!body || !tail) {
        return Unexpected(body ? tail.error() : body.error());
    }
    return StopperPart{{}, *knot, from_figure(*body, rope), *tail, fields.beyond_is};
}

End lay_stopper(const Request& request, const StopperPart& stopper) {
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    End allowance;
    if (stopper.ball) {
        allowance.add(row_of(Item::ball, *stopper.ball));
    }
    allowance.add(row_of(Item::knot, stopper.knot, Group::hand));
    if (stopper.body) {
        allowance.add(row_of(Item::knot_body, *stopper.body, Group::rope));
    }
    allowance.add(row_of(stopper.beyond_is.item, stopper.beyond));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres far_side = tail_end + to_nanometres(stopper.beyond.length);
    const Nanometres face = far_side + to_nanometres(stopper.knot.length) +
                            (stopper.body ? to_nanometres(stopper.body->length) : 0);
    allowance.add(Mark{MarkName::knot_far_side, far_side});
    allowance.add(Mark{MarkName::knot_face, face});
    allowance.standing_mark = face;
    if (stopper.ball) {
        allowance.standing_mark += to_nanometres(stopper.ball->length);
        allowance.add(Mark{MarkName::ball_face, allowance.standing_mark});
        allowance.add(Value{ValueName::ball_m, stopper.ball->length.si()});
    }
    allowance.add(Value{ValueName::knot_m, stopper.knot.length.si()});
    if (stopper.body) {
        allowance.add(Value{ValueName::body_m, stopper.body->length.si()});
    }
    allowance.add(Value{stopper.beyond_is.value, stopper.beyond.length.si()});
    allowance.add(Span{Span::Form::straight, tail_end, far_side, width});
    allowance.add(Span{stopper.form, far_side, face, width, stopper.count});
    if (stopper.ball) {
        allowance.add(Span{Span::Form::ball, face, allowance.standing_mark, width});
    }
    add_retained(allowance, request);
    return allowance;
}

Result<End> lay_stopper_knot(const Request& request, StopperFields fields, double crossings,
                             Steps steps) {
    auto stopper = read_stopper(request, fields);
    if (!stopper) {
        return Unexpected(stopper.error());
    }
    stopper->count = crossings;
    End allowance = lay_stopper(request, *stopper);
    allowance.steps = steps;
    return allowance;
}

} // namespace libsplice
