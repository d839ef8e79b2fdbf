// sheet-bend: this line's end bent to the bight of another, as a hoisting tail to a halyard.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration other_field{
    "other",
    "diameter of the other rope, which is doubled into a bight or ends in an eye",
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

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Double the other, thicker rope into a bight, or take its eye, and bring this rope up "
         "through it from behind."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take this rope round behind both legs of the bight, {turns} times."},
    Step{Action::tie,
         {MarkName::load_side},
         "Tuck it under its own standing part where that enters the bight, not back through the "
         "bight."},
    Step{Action::draw_up,
         {},
         "Draw up until the load-side mark lies in the bight, with {tail} left; both tails come "
         "out on the same side."},
    Step{Action::load, {}, "Keep it loaded, or tape the tails: flogging shakes it out."}};

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    const Length thick = request.fields.length(other).value_or(diameter);
    const auto bend = read_hitch(request, {other, turns, tail, ValueName::other_m},
                                 turn_round(thick, thick, {}, diameter));
    if (!bend) {
        return Unexpected(bend.error());
    }
    End allowance = lay_hitch(request, *bend, {Span::Form::nipped, 1.0});
    allowance.steps = steps;
    return allowance;
}

} // namespace

Kind sheet_bend() {
    return {{"sheet-bend", "bend to another rope's bight or eye; this line's side only",
             "crown of the other rope's bight", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
