// sheet-bend: the thinner rope goes round the bight of the thicker, as a hoisting tail on a
// halyard.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration other_field{
    "other",
    "diameter of the other rope; the bight or eye is the thicker rope's",
    Dimension::length,
    0.0005,
    0.2,
    "this rope's own diameter"};
constexpr FieldDeclaration turns_field{
    "turns",
    "turns round the bight's two legs: 1, or 2 for a double sheet bend",
    Dimension::count,
    1.0,
    2.0,
    "the table's figure, 1"};

enum Field : std::size_t { other, turns, tail };
constexpr std::array fields{other_field, turns_field, field::knot_tail};

constexpr std::array steps_round_bight{
    Step{Action::plain,
         {MarkName::load_side},
         "Double the other rope, the thicker of the two, into a bight, or take its eye. Bring this "
         "rope up through it from behind, the load-side mark in the bight."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take this rope round behind both legs of the bight. Turns there: {turns}."},
    Step{Action::tie,
         {MarkName::knot_far_side},
         "Tuck it under its own standing part, where that enters the bight, and not back through "
         "the bight."},
    Step{Action::draw_up,
         {},
         "Draw up until the load-side mark lies in the bight, with {tail} left; both tails come "
         "out on the same side."},
    Step{Action::load, {}, "Keep it loaded, or tape the tails: flogging shakes it out."}};

constexpr std::array steps_as_bight{
    Step{Action::plain,
         {MarkName::load_side},
         "This rope is the thicker of the two: fold it into a bight with its crown at the "
         "load-side mark."},
    Step{Action::tie,
         {MarkName::load_side},
         "Bring the other rope up through the bight from behind, and round behind both its legs. "
         "Turns there: {turns}."},
    Step{Action::tie,
         {MarkName::knot_far_side},
         "Tuck the other rope under its own standing part, where that enters the bight, and not "
         "back through the bight."},
    Step{Action::draw_up,
         {},
         "Draw up with {tail} of this rope left beyond the turns; both tails come out on the same "
         "side."},
    Step{Action::load, {}, "Keep it loaded, or tape the tails: flogging shakes it out."}};

/// A thinner rope goes round this one's bight: no turns here, but the second leg of the bight.
Result<HitchPart> read_bight(const Request& request, Length thin) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    HitchPart bight;
    bight.around_name = ValueName::other_m;
    bight.turn.around = thin;
    bight.counted = need.field_or(std::optional<std::size_t>(turns), FigureId::turns);
    bight.beyond = need.length(FigureId::bight, diameter);
    bight.tail = need.field_or(tail, FigureId::tail, diameter);
    if (need.failed()) {
        return need.fault();
    }
    return bight;
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    const Length thick = request.fields.length(other).value_or(diameter);
    const bool is_bight = thick < diameter;
    const auto bend = is_bight ? read_bight(request, thick)
                               : read_hitch(request, {other, turns, tail, ValueName::other_m},
                                            turn_round(thick, thick, {}, diameter));
    if (!bend) {
        return Unexpected(bend.error());
    }
    End end = lay_hitch(request, *bend, {Span::Form::nipped, 1.0});
    end.steps = is_bight ? Steps(steps_as_bight) : Steps(steps_round_bight);
    return end;
}

} // namespace

Kind sheet_bend() {
    return {{.name = "sheet-bend",
             .title = "bend of one rope round another's bight or eye; this line's side only",
             .datum = "crown of the bight",
             .constructions = fibre_ropes,
             .fields = fields,
             .families = {"bends"}},
            work_out};
}

} // namespace libsplice
