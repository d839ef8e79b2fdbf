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
constexpr FieldDeclaration bar_field{"pin",
                                     "diameter of the bar, ring or edge that the eye goes round",
                                     Dimension::length,
                                     0.0,
                                     1.0,
                                     "not known: taken as twice the rope, with a spread",
                                     false,
                                     {},
                                     {},
                                     FieldRole::pin};

enum Field : std::size_t { eye, pin, tail, taper, exit, settled, pairs };
constexpr std::array fields{eye_field,   bar_field,      field::tail, field::taper,
                            field::exit, field::settled, field::pairs};

constexpr std::array steps{
    Step{Action::mark, {}, "Put the marks on at the pull to mark at."},
    Step{Action::cut, {}, "Tape the end and cut it square, now that the marks are on."},
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
Bar read_bar(Figures& need, const Request& request, Length diameter) {
    if (const auto given = request.fields.length(pin)) {
        return Bar{*given, {}, cited_job};
    }
    const Figure taken = need.figure(FigureId::bar_diameters);
    const Length bar = taken.length(diameter);
    return Bar{bar, bar * 2.0 * std::numbers::inv_sqrt3, taken.source};
}

/// The two turns on the bar and what draws up besides them.
Length used_on_bar(const Bar& bar, Length diameter, const SourcedLength& draw) {
    return (bar.diameter + diameter) * 2.0 + draw.length;
}

/// Pressed flat while it is made. The finished length ends at the bar, not at the crown of the eye
/// as it was spliced.
Result<EyePart> read_flat_eye(const Request& request, Length diameter, const Bar& bar,
                              const SourcedLength& draw) {
    const auto clear = request.rules.need(FigureId::eye_diameters);
    if (!clear) {
        return Unexpected(clear.error());
    }
    const Length used = used_on_bar(bar, diameter, draw);
    const auto given = request.fields.length(eye);
    const Length inside = given.value_or(used + clear->length(diameter));
    if (inside < used + diameter) {
        return Unexpected(Fault{Code::eye_too_small,
                                "an eye of " + show_length(inside, UnitSystem::metric) +
                                    " is used up on the bar; it must be at least " +
                                    show_length(used + diameter, UnitSystem::metric),
                                {},
                                "eye"});
    }
    auto flat = shape_eye(request, {inside, given ? cited_job : clear->source, {}}, diameter);
    if (flat) {
        SourcedLength bearing = draw;
        bearing.length = inside - used;
        bear_elsewhere(*flat, bearing, bar.diameter);
    }
    return flat;
}

/// The crown's rope, both legs of it, lies in the two turns.
void add_turns_on_bar(End& end, const Bar& bar, const EyeFacts& eye) {
    const Nanometres leg = to_nanometres(eye.inside - eye.bearing);
    const Nanometres crown = end.standing_mark - to_nanometres(eye.rope_round / 2.0);
    end.add(Span{Span::Form::turns, crown - leg, crown + leg, to_nanometres(eye.diameter), 2.0,
                 to_nanometres(bar.diameter)});
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const Bar bar = read_bar(need, request, diameter);
    const auto draw = need.length(FigureId::turn_draw, diameter);
    if (need.failed()) {
        return need.fault();
    }
    const auto flat = need.part(read_flat_eye(request, diameter, bar, draw));
    const auto bury =
        need.part(read_bury(request, {tail, taper, exit, settled, pairs}, host_of(diameter)));
    if (need.failed()) {
        return need.fault();
    }
    auto end = eye_with_bury(request, flat, bury);
    add_turns_on_bar(end, bar, flat.facts);
    if (bar.spread > Length()) {
        end.add(row_of(Item::soft_eye, {{},
                                        bar.spread,
                                        SpreadOrigin::stated_guess,
                                        bar.source,
                                        {FormulaId::not_known_pin, {}}}));
        end.add(Caution{"the bar's diameter is not given as pin: the throat may land elsewhere by "
                        "twice what the bar differs",
                        bar.source});
    }
    end.steps = steps;
    return end;
}

} // namespace

Kind larked_eye() {
    return {{.name = "larked-eye",
             .title = "spliced eye passed round a bar, the line drawn through it",
             .datum = "load side of the bar",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
