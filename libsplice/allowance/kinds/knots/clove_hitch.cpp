// clove-hitch: two crossing turns, which friction has to hold.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"
#include "libsplice/mechanics/rope/hitch.h"

#include <cmath>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> no_or_yes{"no", "yes"};
constexpr FieldDeclaration stitched_field{"stitched",
                                          "whether the tail is stitched to the standing part",
                                          Dimension::choice,
                                          0.0,
                                          0.0,
                                          "no; bare HMPE needs yes",
                                          false,
                                          no_or_yes};

constexpr double own_turns = 2.0;

enum Field : std::size_t { spar, turns, stub, stitched };
constexpr std::array fields{field::spar, field::turns_of("the table's figure, 2", 2.0),
                            field::knot_stub, stitched_field};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end once round the spar from the load-side mark and cross it over the standing "
         "part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Go on round the same way until {turns} turns lie there, and tuck the end under the "
         "crossing."},
    Step{Action::draw_up, {}, "Draw both parts up hard in line with the spar, {stub} left beyond."},
    Step{Action::tie,
         {MarkName::load_side},
         "Add a half hitch where the load comes and goes: the hitch rolls and works loose on a "
         "turning spar."}};

constexpr std::array steps_stitched{
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end once round the spar from the load-side mark and cross it over the standing "
         "part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Go on round the same way until {turns} turns lie there, and tuck the end under the "
         "crossing."},
    Step{Action::draw_up,
         {},
         "Draw both parts up hard, and lay the tail of {stub} along the standing part."},
    Step{Action::stitch,
         {MarkName::knot_far_side},
         "Stitch the tail to the standing part along its whole length, through both, before any "
         "load comes on."}};

Fault needs_stitching(const Request& request, const Figure& slip) {
    Fault fault{Code::field_missing, "a clove hitch slips in bare HMPE: stitch its tail and say "
                                     "stitched = yes, or splice the end"};
    fault.field = "stitched";
    fault.rule = to_text(request.citations.at(slip.source));
    return fault;
}

/// Whether friction alone would hold it, and how many turns more would. Turns beyond the hitch's
/// own two let less of the load past.
void add_margin(Allowance& allowance, const Request& request, const HitchPart& hitch,
                bool is_stitched) {
    const auto friction = request.rules.find(FigureId::friction);
    if (friction == nullptr) {
        return;
    }
    const double coefficient = friction->number();
    const double margin = clove_hitch_margin(hitch.turn.around, request.rope.counting_diameter(),
                                             coefficient, coefficient) /
                          load_past(hitch.turns - own_turns, coefficient);
    allowance.add(Value{ValueName::hitch_margin, margin});
    if (margin >= 1.0 || is_stitched) {
        return;
    }
    allowance.add(
        Value{ValueName::extra_turns, std::ceil(turns_to_hold(1.0 / margin, coefficient))});
    allowance.add(
        Caution{"friction alone does not hold this clove hitch (margin {hitch_margin}, below 1): "
                "finish it with half hitches; turns more that would hold: {extra_turns}",
                friction->source});
}

Result<Allowance> work_out(const Request& request) {
    const bool is_stitched = request.fields.has(stitched) && request.fields.at(stitched) > 0.5;
    const auto slip = request.rules.find(FigureId::slip);
    if (slip != nullptr && !is_stitched) {
        return Unexpected(needs_stitching(request, *slip));
    }
    const auto hitch = read_hitch(request, {spar, turns, stub});
    if (!hitch) {
        return Unexpected(hitch.error());
    }
    Allowance allowance = lay_hitch(request, *hitch, {Span::Form::crossed, hitch->turns - 1.0});
    add_margin(allowance, request, *hitch, is_stitched);
    allowance.steps = is_stitched ? steps_stitched : steps;
    return allowance;
}

} // namespace

Kind clove_hitch() {
    return {{"clove-hitch", "two crossing turns round a spar", "load side of the spar", fibre_ropes,
             fields},
            work_out};
}

} // namespace libsplice
