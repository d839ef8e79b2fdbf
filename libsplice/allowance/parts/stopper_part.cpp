// A stopper: the rope beyond its face, from the tables, the hand and the job.
#include "libsplice/allowance/parts/stopper_part.h"

#include "libsplice/units/show.h"

namespace libsplice {

namespace {

/// The tight length times the hand's factor; the factor's spread is the knot's.
SourcedLength rope_in_knot(Figures& need, const Request& request, std::size_t field) {
    const SourcedLength tight = need.length(FigureId::knot, request.rope.counting_diameter());
    const Figure usual = need.figure(FigureId::set);
    SourcedLength in_knot = times(need.field_or(std::optional(field), FigureId::set), tight);
    in_knot.sd = tight.length * usual.number_spread();
    in_knot.origin = usual.origin;
    return in_knot;
}

/// The knot's least width at its tightest; 0 where no source gives it.
Length width_of_knot(const Request& request) {
    const auto width = request.rules.find(FigureId::knot_width);
    return width == nullptr ? Length() : width->length(request.rope.counting_diameter());
}

std::optional<Fault> find_too_wide_hole(const Request& request, std::size_t field, Length width) {
    const auto hole = request.fields.length(field);
    if (!hole || !(width > Length()) || to_nanometres(*hole) < to_nanometres(width)) {
        return std::nullopt;
    }
    Fault fault{Code::field_out_of_range,
                "the knot draws down to " + show_fine(width, UnitSystem::metric) +
                    " and goes into a hole of " + show_fine(*hole, UnitSystem::metric) +
                    ": tie a larger one, or put a washer or a ball under it"};
    fault.field = "hole";
    return fault;
}

} // namespace

Result<StopperPart> read_stopper(const Request& request, StopperFields fields) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    StopperPart part;
    part.knot = rope_in_knot(need, request, fields.set);
    part.body = need.length(FigureId::body, diameter);
    part.beyond = need.field_or(fields.beyond, fields.beyond_is.figure, diameter);
    part.beyond_is = fields.beyond_is;
    if (need.failed()) {
        return need.fault();
    }
    part.width = width_of_knot(request);
    if (fields.hole) {
        if (auto fault = find_too_wide_hole(request, *fields.hole, part.width)) {
            return Unexpected(*std::move(fault));
        }
    }
    return part;
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
    }
    const auto length_of = [](const std::optional<SourcedLength>& part) {
        return part ? std::optional(part->length) : std::nullopt;
    };
    allowance.knot = KnotFacts{stopper.knot.length, length_of(stopper.body), stopper.beyond.length,
                               stopper.beyond_is.value, length_of(stopper.ball)};
    if (stopper.width > Length()) {
        allowance.knot->width = stopper.width;
    }
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
    add_slip_caution(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace libsplice
