// larked-eye: a spliced eye passed round a bar, and the whole line drawn through it.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/units/show.h"

#include <numbers>

namespace libsplice {

namespace {

constexpr FieldDeclaration eye_field{
    "eye", "inside length of the eye as spliced, pressed flat", Dimension::length, 0.001,
    10.0,  "so that the throat lands 8 D from the bar"};
constexpr FieldDeclaration bar_field{
    "pin", "diameter of the bar, ring or edge that the eye goes round", Dimension::length, 0.0,
    1.0,   "not known: taken as twice the rope, with a spread"};

enum Field : std::size_t { eye, pin, tail, taper, exit, setting, pairs };
constexpr std::array fields{eye_field,   bar_field,      field::tail, field::taper,
                            field::exit, field::setting, field::pairs};

constexpr std::array steps{
    Step{Action::tape, {}, "Tape the end and cut it square."},
    Step{Action::mark, {}, "Put the marks on with the marking tension on the rope."},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Lead the tail in at the far throat, along inside the rope and out at the exit mark, "
         "{exit} from the throat."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw it through until near throat and far throat meet. The eye, pressed flat, is {eye} "
         "long."},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the tail from the taper-start mark to its end, dropping one strand of each hand at "
         "every drop-pair mark."},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Milk the rope back over it until the end is swallowed."},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Lock-stitch through tail and both walls from {stitch_start} to {stitch_end} beyond the "
         "throat."},
    Step{Action::load,
         {},
         "Load the eye on its own before it is hung, and take up what the splice has given."},
    Step{Action::hang,
         {},
         "Pass the eye round the bar, and the line's other end with all that is on it through the "
         "eye. Lay both turns side by side on the bar, none across the other, and draw up."},
    Step{Action::measure,
         {},
         "Under the marking tension the throat should lie {bearing} from the load side of the bar. "
         "Measure the line from there."}};

struct Bar {
    Length diameter;
    Length spread; ///< of the throat's place
    CitationId source = cited_job;
};

/// A bar that is not known may be anything from nothing to twice what is taken for it.
Result<Bar> read_bar(const Request& request, Length rope) {
    if (const auto given = request.fields.length(pin)) {
        return Bar{*given, {}, cited_job};
    }
    const auto taken = request.rules.need(FigureId::bar_diameters);
    if (!taken) {
        return Unexpected(taken.error());
    }
    const Length diameter = taken->length(rope);
    return Bar{diameter, diameter * 2.0 * std::numbers::inv_sqrt3, taken->source};
}

/// The two turns on the bar and what draws up besides them.
Length used_on_bar(const Bar& bar, Length rope, const SourcedLength& draw) {
    return (bar.diameter + rope) * 2.0 + draw.length;
}

Result<EyePart> read_flat_eye(const Request& request, Length rope, Length used) {
    const auto stand = request.rules.need(FigureId::eye_diameters);
    if (!stand) {
        return Unexpected(stand.error());
    }
    const auto given = request.fields.length(eye);
    const Length inside = given.value_or(used + stand->length(rope));
    if (inside < used + rope) {
        return Unexpected(Fault{Code::eye_too_small,
                                "an eye of " + show_length(inside, UnitSystem::metric) +
                                    " is used up on the bar; it must be at least " +
                                    show_length(used + rope, UnitSystem::metric),
                                {},
                                "eye"});
    }
    return shape_eye(request, inside, given ? cited_job : stand->source, Length(), rope);
}

/// The crown's rope, both legs of it, lies in the two turns.
void add_turns_on_bar(End& allowance, const Bar& bar, Length used, Length rope) {
    for (const Mark& mark : allowance.marks) {
        if (mark.name == MarkName::crown) {
            const Nanometres leg = to_nanometres(used);
            allowance.add(Span{Span::Form::turns, mark.from_tail_end - leg,
                               mark.from_tail_end + leg, to_nanometres(rope), 2.0,
                               to_nanometres(bar.diameter)});
        }
    }
}

/// The finished length ends at the bar, not at the crown of the eye as it was spliced.
void move_bearing_to_bar(End& allowance, const Bar& bar, Length used, const SourcedLength& draw) {
    set_value(allowance, ValueName::pin_m, bar.diameter);
    allowance.add(Value{ValueName::shaped_on_m, 0.0});
    for (Row& row : allowance.rows) {
        if (row.item == Item::throat_to_bearing) {
            row.length += to_nanometres(used);
            row.sd = draw.sd.si();
            row.origin = draw.origin;
            row.source = draw.source;
            allowance.add(Value{ValueName::bearing_m, from_nanometres(-row.length).si()});
        }
    }
}

Result<End> work_out(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    const auto bar = read_bar(request, rope);
    const auto draw_figure = request.rules.need(FigureId::turn_draw);
    if (!bar || !draw_figure) {
        return Unexpected(bar ? draw_figure.error() : bar.error());
    }
    const auto draw = from_figure(*draw_figure, rope);
    const Length used = used_on_bar(*bar, rope, draw);
    const auto flat = read_flat_eye(request, rope, used);
    const auto bury = read_bury(request, {tail, taper, exit, setting, pairs}, rope);
    if (!flat || !bury) {
        return Unexpected(flat ? bury.error() : flat.error());
    }
    auto allowance = eye_with_bury(request, *flat, *bury);
    move_bearing_to_bar(allowance, *bar, used, draw);
    add_turns_on_bar(allowance, *bar, used, rope);
    if (bar->spread > Length()) {
        allowance.add(
            row_of(Item::soft_eye, {{}, bar->spread, SpreadOrigin::stated_guess, bar->source}));
        allowance.add(Caution{"the bar's diameter is not given as pin: the throat may land "
                              "elsewhere by twice what the bar differs",
                              bar->source});
    }
    allowance.steps = steps;
    return allowance;
}

} // namespace

Kind larked_eye() {
    return {{"larked-eye", "spliced eye passed round a bar, the line drawn through it",
             "load side of the bar", Constructions(Construction::twelve_strand), fields},
            work_out};
}

} // namespace libsplice
