// ring-eye: an eye closed round a low-friction ring by a seizing or stitching between its legs.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> closing_choices{"seized", "stitched"};

constexpr FieldDeclaration eye_field{
    "eye",
    "from the bottom of the groove on the ring's far side to the throat, the closing drawn up",
    Dimension::length,
    0.001,
    10.0,
    "just long enough for the ring and the closing"};
constexpr FieldDeclaration groove_field{"groove",
                                        "diameter of the ring at the bottom of its groove",
                                        Dimension::length,
                                        0.002,
                                        1.0,
                                        "none: measure the ring",
                                        true};
constexpr FieldDeclaration bore_field{
    "bore", "diameter of the ring's hole", Dimension::length, 0.001, 1.0, "none: measure the ring",
    true};
constexpr FieldDeclaration closing_field{"closing",
                                         "what draws the legs together behind the ring",
                                         Dimension::choice,
                                         0.0,
                                         0.0,
                                         "seized",
                                         false,
                                         closing_choices};

enum Field : std::size_t { eye, groove, bore, closing, tail, taper, exit, settled, pairs };
constexpr std::array fields{eye_field,    groove_field, bore_field,     closing_field, field::tail,
                            field::taper, field::exit,  field::settled, field::pairs};

constexpr Step square_end{
    Action::cut, {}, "Tape the end and cut it square, now that the marks are on."};
constexpr Step put_marks{Action::mark, {}, "Put the marks on at the pull to mark at."};
constexpr Step thread{
    Action::thread, {}, "Thread the ring now: it does not go in once the legs are closed."};
constexpr Step lead_through{Action::lead_in,
                            {MarkName::far_throat, MarkName::exit},
                            "Lead the tail in at the far throat and out at the exit mark, {exit} "
                            "on."};
constexpr Step draw_through{Action::bring_together,
                            {MarkName::near_throat, MarkName::far_throat},
                            "Draw it through until the throats meet."};
constexpr Step thin{Action::taper,
                    {MarkName::taper_start},
                    "Thin it from the taper-start mark, two strands of opposite hand at each "
                    "drop-pair mark."};
constexpr Step bury_it{Action::bury,
                       {MarkName::far_throat, MarkName::bury_end},
                       "Milk the rope over the tail until its end is swallowed."};
constexpr Step lock{Action::stitch,
                    {MarkName::far_throat},
                    "Lock-stitch from {stitch_start} to {stitch_end} beyond the throat."};
constexpr Step load{Action::load,
                    {},
                    "Load the ring in the way it will work. Measure from the bearing face of its "
                    "bore: the throat should lie {bearing} from there."};

/// All of them, with the closing that keeps the ring in.
constexpr auto closed_by(Action action, std::string_view text) {
    return std::array{put_marks,    square_end,   thread,
                      lead_through, draw_through, thin,
                      bury_it,      lock,         Step{action, {MarkName::near_throat}, text},
                      load};
}
constexpr auto steps_seized = closed_by(
    Action::seize,
    "Press the rope into the groove all round. Seize the legs together close behind the ring, "
    "{seizing} long. Pass two or three crossing turns between the legs. The ring must not turn out "
    "when it is twisted by hand.");
constexpr auto steps_counted = closed_by(
    Action::seize,
    "Press the rope into the groove all round. Seize the legs together close behind the ring with "
    "{turns} turns of doubled twine over {seizing}. Pass two or three crossing turns between the "
    "legs. The ring must not turn out when it is twisted by hand.");
constexpr auto steps_stitched = closed_by(
    Action::stitch,
    "Press the rope into the groove all round. Stitch through both legs from close behind the ring "
    "for {overlap}, and back again between the first passes. The ring must not turn out when it is "
    "twisted by hand.");

struct Ring {
    Length groove;
    Length wall; ///< from the groove's bottom to the bore
    bool stitched = false;
    Length closing; ///< length of the seizing or stitching
};

Result<Ring> read_ring(const Request& request, Length diameter) {
    Ring ring;
    ring.groove = *request.fields.length(groove);
    const Length hole = *request.fields.length(bore);
    if (hole >= ring.groove) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "a bore of " + show_length(hole, UnitSystem::metric) +
                                    " leaves no ring inside a groove of " +
                                    show_length(ring.groove, UnitSystem::metric),
                                {},
                                "bore"});
    }
    ring.wall = (ring.groove - hole) / 2.0;
    ring.stitched = request.fields.has(closing) && request.fields.at(closing) > 0.5;
    const auto length =
        request.rules.need(ring.stitched ? FigureId::stitch_length : FigureId::seizing);
    if (!length) {
        return Unexpected(length.error());
    }
    ring.closing = length->length(diameter);
    return ring;
}

/// Rope round the ring to where the closing starts, and from there two legs side by side. Pin and
/// line bear on the bore, not on the groove that the rope lies in.
Result<EyePart> close_round(const Request& request, const Ring& ring, Length diameter) {
    const auto clear = request.rules.need(FigureId::ring_clearance);
    if (!clear) {
        return Unexpected(clear.error());
    }
    const Length from_centre = ring.groove / 2.0 + diameter / 2.0 + clear->length(diameter);
    const Length shortest = ring.groove / 2.0 + from_centre + ring.closing;
    const auto given = request.fields.length(eye);
    const Length inside = given.value_or(shortest);
    auto round = bend_eye(
        {inside, given ? cited_job : clear->source, ring.groove, inside - shortest + ring.closing},
        diameter);
    if (!round || to_nanometres(inside) < to_nanometres(shortest)) {
        return Unexpected(Fault{Code::eye_too_small,
                                "an eye of " + show_length(inside, UnitSystem::metric) +
                                    " has no room for the ring and its closing; it must be at "
                                    "least " +
                                    show_length(shortest, UnitSystem::metric),
                                {},
                                "eye"});
    }
    SourcedLength bearing = round->bearing;
    bearing.length = inside - ring.wall;
    bear_elsewhere(*round, bearing, ring.groove - ring.wall * 2.0);
    return *round;
}

/// The closing holds both legs, next to the ring.
void add_closing(End& end, const Ring& ring, const EyeFacts& eye) {
    const auto form = ring.stitched ? Span::Form::stitched : Span::Form::seized;
    const Nanometres width = to_nanometres(eye.diameter);
    const Nanometres far_throat = end.standing_mark;
    const Nanometres near_throat = far_throat - to_nanometres(eye.rope_round);
    const Nanometres ends = near_throat + to_nanometres(eye.legs);
    const Nanometres begins = ends - to_nanometres(ring.closing);
    end.add(Span{form, begins, ends, width});
    end.add(
        Span{form, far_throat - (ends - near_throat), far_throat - (begins - near_throat), width});
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    const auto ring = read_ring(request, diameter);
    if (!ring) {
        return Unexpected(ring.error());
    }
    Figures need(request);
    const auto eye_part = need.part(close_round(request, *ring, diameter));
    const auto bury =
        need.part(read_bury(request, {tail, taper, exit, settled, pairs}, host_of(diameter)));
    if (need.failed()) {
        return need.fault();
    }
    auto end = eye_with_bury(request, eye_part, bury);
    add_closing(end, *ring, eye_part.facts);
    end.add(Value{ValueName::groove_m, ring->groove.si()});
    end.add(Value{ValueName::bore_m, eye_part.facts.pin.si()});
    end.add(
        Value{ring->stitched ? ValueName::overlap_m : ValueName::seizing_m, ring->closing.si()});
    if (ring->stitched) {
        end.steps = steps_stitched;
    } else if (const Figure* counted = request.rules.find(FigureId::turns)) {
        end.add(Value{ValueName::turns, counted->number()});
        end.steps = steps_counted;
    } else {
        end.steps = steps_seized;
    }
    return end;
}

} // namespace

Kind ring_eye() {
    return {{.name = "ring-eye",
             .title = "eye closed round a low-friction ring",
             .datum = "bearing face of the ring's bore, on the far side from the throat",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
