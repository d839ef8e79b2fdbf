// soft-shackle: doubled rope with a noose at its middle that closes behind a knot of both ends.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/parts.h"

#include <numbers>

namespace libsplice {

namespace {

constexpr FieldDeclaration pin_field{
    "pin",
    "diameter of what the shackle bears on, at either bearing point",
    Dimension::length,
    0.0,
    1.0,
    "0 mm: bends as tight as the rope allows",
    false,
    {},
    {},
    FieldRole::pin};
constexpr FieldDeclaration end_left_field{"end_left",
                                          "each end beyond the knot, led back into its own leg",
                                          Dimension::length,
                                          0.0,
                                          2.0,
                                          "the table's multiple of D"};

enum Field : std::size_t { pin, end_left };
constexpr std::array fields{pin_field, end_left_field};

constexpr std::array steps{
    Step{
        Action::mark, {}, "Tape both ends. Put the marks of both sides on at the pull to mark at."},
    Step{Action::plain,
         {},
         "Mark the middle, halfway between the two knot-face marks, and fold the rope there. Mark "
         "the noose's throat on both legs, {noose} from the middle."},
    Step{Action::pass_tail_through_host,
         {},
         "Open one leg at its noose mark and pass the other leg through it, up to its own mark. "
         "The noose can then be opened, and closes when the legs are pulled."},
    Step{Action::plain,
         {},
         "Lay the legs side by side, without turns, as far as the knot-face marks."},
    Step{Action::tie,
         {MarkName::knot_face},
         "There lay the two ends into a carrick bend, loosely, so that they leave it on opposite "
         "sides and the legs run together below it."},
    Step{Action::tie,
         {MarkName::knot_face},
         "Take each end on round the outside of the other's leg, the same way round for both, and "
         "up through the opening in the middle: a two-strand diamond knot, open still."},
    Step{Action::lead_in,
         {MarkName::knot_face, MarkName::bury_end},
         "While the knot is open, send each end back down through its middle and into its own leg, "
         "{end_left} along inside. Both bights stay on top of the knot."},
    Step{Action::draw_up,
         {},
         "Draw the knot up a little at a time, going round the parts in order, with its face on "
         "the marks. Set it with the heaviest pull at hand. Both legs must come out equally long."},
    Step{Action::taper, {MarkName::knot_far_side}, "Thin what hangs out of each leg."},
    Step{Action::bury,
         {MarkName::knot_face, MarkName::bury_end},
         "Stroke each leg away from the knot until the end in it has gone in."},
    Step{Action::stitch,
         {MarkName::knot_face},
         "Stitch through leg and end close under the knot, on both sides: unloaded, the ends creep "
         "out."},
    Step{Action::load,
         {},
         "Close the noose behind the knot. Load the shackle between two pins with the knot out of "
         "the line of the load. Then measure, and see that the noose cannot pass the knot."}};

/// Both legs lie half round the bearing at either end; a straight line there counts already.
SourcedLength round_bearings(const Request& request, Length diameter) {
    const Length bearing = request.fields.length(pin).value_or(Length());
    return from_geometry((bearing + diameter) * std::numbers::pi - bearing * 2.0,
                         {FormulaId::round_bearings, {bearing.si(), diameter.si()}});
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto noose = need.length(FigureId::noose, diameter);
    const auto knot = need.length(FigureId::knot, diameter);
    const auto left = need.field_or(end_left, FigureId::end_left, diameter);
    if (need.failed()) {
        return need.fault();
    }
    // The rows of one of the two legs, then of both.
    End end;
    end.add(row_of(Item::round_bearings, round_bearings(request, diameter)));
    end.add(row_of(Item::noose, noose, Group::hand));
    end.add(row_of(Item::knot, knot, Group::hand));
    end.add(row_of(Item::end_left, left));
    const Nanometres tail_end = add_cutting_loss(end, request, Cut::shears);
    count_both_sides(end);
    const Nanometres far_side = tail_end + to_nanometres(left.length);
    end.standing_mark = far_side + to_nanometres(knot.length);
    end.laid = 4;
    end.pin = request.fields.length(pin);
    end.knot = KnotFacts{knot.length, {}, left.length, ValueName::end_left_m, {}};
    end.add(Mark{MarkName::knot_far_side, far_side});
    end.add(Mark{MarkName::knot_face, end.standing_mark});
    end.add(Mark{MarkName::bury_end, end.standing_mark + to_nanometres(left.length)});
    end.add(Value{ValueName::pin_m, end.pin.value_or(Length()).si()});
    end.add(Value{ValueName::noose_m, noose.length.si()});
    end.add(Span{Span::Form::knot, far_side, end.standing_mark, to_nanometres(diameter)});
    end.add(Caution{"every figure of this shackle is an estimate: make one, measure it, and cut "
                    "the rest from that",
                    noose.source});
    end.add(Caution{"keep the knot out of the line of the load, and the shackle off sharp edges",
                    noose.source});
    end.steps = steps;
    return end;
}

} // namespace

Kind soft_shackle() {
    return {{"soft-shackle", "shackle of doubled rope, a noose closed behind a knot",
             "far side of what it bears on, at either end, the shackle closed",
             Constructions(Construction::twelve_strand), fields, Reach::both_ends},
            work_out};
}

} // namespace libsplice
