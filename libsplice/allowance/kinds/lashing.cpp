// lashing: turns round an eyelet or ring, or through two fittings, finished with half hitches.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration gap_field{"gap",
                                     "clear distance between the two fittings that it goes through",
                                     Dimension::length,
                                     0.0,
                                     2.0,
                                     "none: it goes round one"};
constexpr FieldDeclaration second_field{"pin",
                                        "diameter of the second fitting, where there is a gap",
                                        Dimension::length,
                                        0.001,
                                        1.0,
                                        "as the first"};
constexpr FieldDeclaration hitches_field{
    "hitches", "half hitches that finish it", Dimension::count, 1.0, 10.0, "the table's figure, 3"};

enum Field : std::size_t { spar, turns, gap, pin, hitches };
constexpr std::array fields{field::spar, field::turns_of("the table's figure, 4"), gap_field,
                            second_field, hitches_field};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Start at the load-side mark and take {turns} turns round, side by side, each drawn up as "
         "hard as the last."},
    Step{Action::draw_up,
         {},
         "Heave the last turn tight and hold it while the first half hitch is made."},
    Step{Action::tie,
         {MarkName::turns_end},
         "Finish with {half_hitches} half hitches round the turns, {finish} of rope with the tail, "
         "each pulled down on the one before."},
    Step{Action::load, {}, "Load it, and draw the turns up again if they have gone slack."}};

constexpr std::array steps_two{
    Step{Action::tie,
         {MarkName::load_side},
         "Start at the load-side mark and lead the line through the second fitting and back, "
         "{turns} turns, side by side."},
    Step{Action::draw_up,
         {},
         "Pull each turn up until the gap is {gap}, and even the turns out by hand before the last "
         "is heaved tight."},
    Step{Action::tie,
         {MarkName::turns_end},
         "Frap with {half_hitches} half hitches round all the turns in the gap, {finish} of rope "
         "with the tail."},
    Step{
        Action::load, {}, "Load it, check the gap, and draw the turns up again if it has opened."}};

struct Lashing {
    double turns = 0.0;
    Turn turn;
    double hitches = 0.0;
    SourcedLength finish; ///< half hitches with their tail
};

Result<Lashing> read_lashing(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    Lashing lashing;
    lashing.turns = need.field_or(std::optional<std::size_t>(turns), FigureId::turns);
    lashing.hitches = need.field_or(std::optional<std::size_t>(hitches), FigureId::half_hitches);
    lashing.finish = times(lashing.hitches, need.length(FigureId::per_half_hitch, diameter));
    if (need.failed()) {
        return need.fault();
    }
    const Length first(request.fields.at(spar));
    const Length second = request.fields.length(pin).value_or(first);
    const auto between = request.fields.length(gap);
    lashing.turn =
        between ? turn_round(first, second, *between, diameter) : turn_round(first, diameter);
    return lashing;
}

void add_facts(End& end, const Request& request, const Lashing& lashing) {
    end.turns = TurnFacts{.count = lashing.turns,
                          .around = lashing.turn.around,
                          .load_past = load_past_turns(request, lashing.turns)};
    end.add(Value{ValueName::half_hitches, lashing.hitches});
    end.add(Value{ValueName::finish_m, lashing.finish.length.si()});
    if (request.fields.has(gap)) {
        end.add(Value{ValueName::gap_m, request.fields.at(gap)});
    }
}

/// Half hitches in bare HMPE hold little: what the turns leave over has to be little too.
void add_finish_caution(End& end, const Request& request) {
    if (const auto slip = request.rules.find(FigureId::slip)) {
        end.add(Caution{"half hitches slip in this rope, and a share of {load_past_turns} of the "
                        "load gets past the turns: take more turns or stitch the tail",
                        slip->source, Caution::Weight::refused_for_person});
    }
}

Result<End> work_out(const Request& request) {
    if (request.fields.has(pin) && !request.fields.has(gap)) {
        return Unexpected(Fault{Code::field_missing,
                                "a lashing through a second fitting needs the gap between the two",
                                {},
                                "gap"});
    }
    const auto lashing = read_lashing(request);
    if (!lashing) {
        return Unexpected(lashing.error());
    }
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    const SourcedLength round = rope_in(lashing->turn, lashing->turns);
    End allowance;
    allowance.add(row_of(Item::turns, round));
    allowance.add(row_of(Item::half_hitches, lashing->finish, Group::hand));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres turns_end = tail_end + to_nanometres(lashing->finish.length);
    allowance.standing_mark = turns_end + to_nanometres(round.length);
    allowance.add(Mark{MarkName::turns_end, turns_end});
    allowance.add(Mark{MarkName::load_side, allowance.standing_mark});
    allowance.add(Span{Span::Form::half_hitches, tail_end, turns_end, width, lashing->hitches});
    allowance.add(Span{Span::Form::turns, turns_end, allowance.standing_mark, width, lashing->turns,
                       to_nanometres(Length(request.fields.at(spar)))});
    add_facts(allowance, request, *lashing);
    add_finish_caution(allowance, request);
    allowance.steps = request.fields.has(gap) ? steps_two : steps;
    return allowance;
}

} // namespace

Kind lashing() {
    return {{"lashing", "turns round a fitting or through two, finished with half hitches",
             "load side of the first fitting", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
