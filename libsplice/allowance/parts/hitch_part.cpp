// A hitch: its turns, the rest of it and what is left, from the load side outwards.
#include "libsplice/allowance/parts/hitch_part.h"

#include "libsplice/mechanics/rope/hitch.h"

namespace libsplice {

Result<double> read_turns(const Request& request, std::optional<std::size_t> field) {
    if (field && request.fields.has(*field)) {
        return request.fields.at(*field);
    }
    const auto usual = request.rules.need(FigureId::turns);
    if (!usual) {
        return Unexpected(usual.error());
    }
    return usual->number();
}

Result<HitchPart> read_hitch(const Request& request, HitchFields fields) {
    const Length around(request.fields.at(fields.around));
    return read_hitch(request, fields,
                      {around, round_turn(around, request.rope.counting_diameter())});
}

Result<HitchPart> read_hitch(const Request& request, HitchFields fields, Turn turn) {
    const Length rope = request.rope.counting_diameter();
    const auto count = read_turns(request, fields.turns);
    const auto beyond = request.rules.need(FigureId::beyond_turns);
    const auto left = field_or_figure(request, fields.tail, FigureId::tail, rope);
    if (!count || !beyond) {
        return Unexpected(count ? beyond.error() : count.error());
    }
    if (!left) {
        return Unexpected(left.error());
    }
    return HitchPart{fields.around_name, turn, *count, from_figure(*beyond, rope), *left};
}

void add_load_past(End& allowance, const Request& request) {
    const auto turns = allowance.find(ValueName::turns);
    const auto friction = request.rules.find(FigureId::friction);
    if (turns && friction != nullptr) {
        allowance.add(Value{ValueName::load_past_turns, load_past(*turns, friction->number())});
    }
}

End lay_hitch(const Request& request, const HitchPart& hitch, Finish finish) {
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    const SourcedLength turns = from_geometry(hitch.turn.rope * hitch.turns);

    End allowance;
    allowance.add(row_of(Item::turns, turns));
    allowance.add(row_of(Item::knot, hitch.beyond, Group::hand));
    allowance.add(row_of(Item::tail, hitch.tail));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres far_side = tail_end + to_nanometres(hitch.tail.length);
    const Nanometres turns_end = far_side + to_nanometres(hitch.beyond.length);
    allowance.standing_mark = turns_end + to_nanometres(turns.length);
    allowance.add(Mark{MarkName::knot_far_side, far_side});
    allowance.add(Mark{MarkName::turns_end, turns_end});
    allowance.add(Mark{MarkName::load_side, allowance.standing_mark});
    allowance.add(Value{hitch.around_name, hitch.turn.around.si()});
    allowance.add(Value{ValueName::turns, hitch.turns});
    allowance.add(Value{ValueName::knot_m, hitch.beyond.length.si()});
    allowance.add(Value{ValueName::tail_m, hitch.tail.length.si()});
    allowance.add(
        Value{ValueName::bend_ratio, hitch.turn.around / request.rope.counting_diameter()});
    allowance.add(Span{finish.form, far_side, turns_end, width, finish.count});
    allowance.add(Span{Span::Form::turns, turns_end, allowance.standing_mark, width, hitch.turns,
                       to_nanometres(hitch.turn.around)});
    add_slip_caution(allowance, request);
    add_retained(allowance, request);
    return allowance;
}

} // namespace libsplice
