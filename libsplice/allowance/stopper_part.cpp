#include "libsplice/allowance/stopper_part.h"

#include "libsplice/allowance/parts.h"

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

Result<Allowance> stopper_knot(const Request& request, StopperFields fields) {
    const Length rope = request.rope.counting_diameter();
    const auto knot = rope_in_knot(request, fields.set);
    if (!knot) {
        return Unexpected(knot.error());
    }
    const auto body = request.rules.need(FigureId::body);
    const auto stub = field_or_figure(request, fields.stub, FigureId::stub, rope);
    if (!body || !stub) {
        return Unexpected(body ? stub.error() : body.error());
    }
    const auto along = from_figure(*body, rope);

    Allowance allowance;
    allowance.add(row_of(Item::knot, *knot, Group::hand));
    allowance.add(row_of(Item::knot_body, along));
    allowance.add(row_of(Item::stub, *stub));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres far_side = tail_end + to_nanometres(stub->length);
    const Nanometres face = far_side + to_nanometres(knot->length) + to_nanometres(along.length);
    allowance.add(Mark{MarkName::knot_far_side, far_side});
    allowance.add(Mark{MarkName::knot_face, face});
    allowance.standing_mark = face;
    allowance.add(Value{ValueName::knot_m, knot->length.si()});
    allowance.add(Value{ValueName::body_m, along.length.si()});
    allowance.add(Value{ValueName::stub_m, stub->length.si()});
    allowance.add(Span{Span::Form::straight, tail_end, far_side, to_nanometres(rope)});
    allowance.add(Span{Span::Form::knot, far_side, face, to_nanometres(rope)});
    add_retained(allowance, request);
    return allowance;
}

} // namespace libsplice
