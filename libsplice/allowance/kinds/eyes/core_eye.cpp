// core-eye: the load-bearing core is spliced into itself, and its cover stays over the eye.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"
#include "libsplice/mechanics/rope/braid.h"

namespace libsplice {

namespace {

enum Field : std::size_t { eye, pin, tail, taper, exit, settled, core, pairs, strands };
constexpr std::array fields{field::eye,     field::pin,  field::tail,  field::taper,  field::exit,
                            field::settled, field::core, field::pairs, field::strands};

constexpr std::array steps{
    Step{Action::slip_knot,
         {},
         "Tie a slip knot {slip_knot} from the end, so that the cover can be drawn back and comes "
         "to lie again as it was."},
    Step{Action::mark,
         {MarkName::near_throat, MarkName::far_throat},
         "Mark the cover at the near throat, which is the reference, and at the far throat, where "
         "the core is to come out.",
         Part::cover},
    Step{Action::draw_core, {MarkName::far_throat}, "Draw the core out there, from its end on."},
    Step{Action::mark,
         {MarkName::bury_end, MarkName::exit},
         "Slide the cover towards the knot and put bury end and exit on the bare core.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the core's tail from the taper-start mark, at each drop-pair mark by one strand of "
         "each hand.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Lead it into the core beside the far throat, along inside and out at the exit, {exit} "
         "on. The eye's rope keeps its cover.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw the core through until near throat and far throat meet: the eye is {eye}.",
         Part::core},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Milk the core back over its tail until the end is swallowed.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::far_throat},
         "Unlay the cover's end to a taper, lead it through the eye into the cover beyond the far "
         "throat, and bring it out where it is thin enough to be cut flush.",
         Part::cover},
    Step{Action::smooth,
         {MarkName::far_throat},
         "Smooth the cover from the slip knot towards the eye until the throat is covered and the "
         "marks meet. Do not force it: a cover drawn tight over the eye takes load that is not its "
         "own.",
         Part::cover},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Stitch through cover and core from {stitch_start} to {stitch_end} beyond the throat, in "
         "two directions. Undo the slip knot."},
    Step{Action::load, {}, "Load the eye and measure it."},
    Step{Action::smooth,
         {MarkName::far_throat},
         "Smooth the cover to the line's far end and trim there what comes out.",
         Part::cover}};

/// The cover goes on over the swollen core.
Length over_cover(Length diameter, Length core_diameter) {
    const double ratio = core_diameter / diameter;
    return diameter_over_bury(diameter, ratio * ratio);
}

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto core_part = need.part(read_core(request, core));
    if (need.failed()) {
        return need.fault();
    }
    const auto eye_part = need.part(read_eye(request, {eye, pin}, diameter));
    const auto bury =
        need.part(read_bury(request, {tail, taper, exit, settled, pairs, strands},
                            {core_part.diameter, diameter, over_cover(diameter, core_part.diameter),
                             Span::Form::core}));
    if (need.failed()) {
        return need.fault();
    }
    auto end = eye_with_bury(request, eye_part, bury);
    add_slip_knot(end, request);
    add_small_rope_caution(end, request,
                           "the core of covered rope this thin is too small for most hands: "
                           "consider a stripped-eye or a knot");
    add_core_caution(end, core_part,
                     "the core's diameter is assumed, not known: measure it and give it as core, "
                     "for it decides the take-up and the least tail");
    end.steps = steps;
    return end;
}

} // namespace

Kind core_eye() {
    return {{"core-eye", "eye splice, the core into itself under its cover",
             "inside of the eye's crown", Constructions(Construction::core_dependent), fields},
            work_out};
}

} // namespace libsplice
