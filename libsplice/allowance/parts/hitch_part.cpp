// A hitch: its turns, the rest of it and what is left, from the load side outwards.
#include "libsplice/allowance/parts/hitch_part.h"

#include "libsplice/mechanics/rope/hitch.h"

namespace libsplice {

Turn turn_round(Length around, Length diameter) {
    return {around, from_geometry(round_turn(around, diameter),
                                  {FormulaId::turns, {1.0, around.si(), diameter.si()}})};
}

Turn turn_round(Length first, Length second, Length gap, Length diameter) {
    return {first,
            from_geometry(turn_round_two(first, second, gap, diameter),
                          {FormulaId::turns_round_two,
                           {1.0, ((first + diameter) / 2.0).si(), ((second + diameter) / 2.0).si(),
                            (first / 2.0 + gap + second / 2.0).si()}})};
}

SourcedLength rope_in(const Turn& turn, double count) {
    SourcedLength rope = turn.rope;
    rope.length = rope.length * count;
    *rope.working.numbers.begin() = count; // the first operand of both formulas
    return rope;
}

Result<HitchPart> read_hitch(const Request& request, HitchFields fields) {
    const Length around(request.fields.at(fields.around));
    return read_hitch(request, fields, turn_round(around, request.rope.counting_diameter()));
}

Result<HitchPart> read_hitch(const Request& request, HitchFields fields, Turn turn) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    HitchPart part;
    part.around_name = fields.around_name;
    part.turn = turn;
    part.turns = need.field_or(fields.turns, FigureId::turns);
    part.counted = part.turns;
    part.beyond = need.length(FigureId::beyond_turns, diameter);
    part.tail = need.field_or(fields.tail, FigureId::tail, diameter);
    if (need.failed()) {
        return need.fault();
    }
    return part;
}

std::optional<double> load_past_turns(const Request& request, double turns) {
    const auto friction = request.rules.find(FigureId::friction);
    return friction == nullptr ? std::nullopt : std::optional(load_past(turns, friction->number()));
}

End lay_hitch(const Request& request, const HitchPart& hitch, Finish finish) {
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    const bool goes_round = hitch.turns > 0.0;

    End allowance;
    SourcedLength turns;
    if (goes_round) {
        turns = rope_in(hitch.turn, hitch.turns);
        allowance.add(row_of(Item::turns, turns));
    }
    if (hitch.own_turns) {
        allowance.add(row_of(Item::turns, *hitch.own_turns));
    }
    allowance.add(row_of(Item::knot, hitch.beyond, Group::hand));
    allowance.add(row_of(Item::tail, hitch.tail));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres far_side = tail_end + to_nanometres(hitch.tail.length);
    const Nanometres turns_end = far_side + to_nanometres(hitch.beyond.length) +
                                 (hitch.own_turns ? to_nanometres(hitch.own_turns->length) : 0);
    allowance.standing_mark = turns_end + to_nanometres(turns.length);
    allowance.add(Mark{MarkName::knot_far_side, far_side});
    if (goes_round) {
        allowance.add(Mark{MarkName::turns_end, turns_end});
    }
    allowance.add(Mark{MarkName::load_side, allowance.standing_mark});
    allowance.turns = TurnFacts{.count = hitch.counted,
                                .around = hitch.turn.around,
                                .around_name = hitch.around_name,
                                .bend_ratio = hitch.turn.around / request.rope.counting_diameter()};
    allowance.knot = KnotFacts{hitch.beyond.length, {}, hitch.tail.length};
    if (hitch.around_name == ValueName::pin_m) {
        allowance.pin = hitch.turn.around;
    }
    allowance.add(Span{finish.form, far_side, turns_end, width, finish.count});
    if (goes_round) {
        allowance.add(Span{Span::Form::turns, turns_end, allowance.standing_mark, width,
                           hitch.turns, to_nanometres(hitch.turn.around)});
    }
    add_slip_caution(allowance, request);
    add_retained(allowance, request);
    return allowance;
}

} // namespace libsplice
