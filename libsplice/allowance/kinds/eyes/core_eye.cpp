// core-eye: the load-bearing core is spliced into itself, and its cover stays over the eye.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"
#include "libsplice/mechanics/rope/braid.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> ways{"through-the-eye", "core-kept"};
constexpr FieldDeclaration exit_field{
    "exit",
    "along the core, from where it is entered to where the fid comes out; no rope is lost by it",
    Dimension::length,
    0.001,
    40.0,
    "the rule's exit, in proportion to the tail"};
constexpr FieldDeclaration way_field{
    "way",
    "how the core gets round the eye: drawn out at the far throat and led back through it, or "
    "drawn out at the near throat and never taken out of it",
    Dimension::choice,
    0.0,
    0.0,
    "through-the-eye",
    false,
    ways};

enum Field : std::size_t { eye, pin, tail, taper, exit, settled, core, pairs, strands, way };
constexpr std::array fields{field::eye,     field::pin,  field::tail,  field::taper,   exit_field,
                            field::settled, field::core, field::pairs, field::strands, way_field};

constexpr Step knot_first{Action::slip_knot,
                          {},
                          "Tie a slip knot {slip_knot} from the end. It keeps cover and core "
                          "together in the standing part while you work."};
constexpr Step mark_cover{Action::mark,
                          {MarkName::near_throat, MarkName::far_throat},
                          "Tape the end. Mark the cover at the near throat and at the far throat.",
                          Part::cover};
constexpr Step thin_core{
    Action::taper,
    {MarkName::taper_start},
    "Thin what hangs out of the core at the exit, from its taper-start mark to "
    "the end, one strand of each hand at a time.",
    Part::core};
constexpr Step stitch_it{Action::stitch,
                         {MarkName::far_throat},
                         "Stitch through cover and core from {stitch_start} to {stitch_end} beyond "
                         "the throat, then again a quarter turn round. Undo the slip knot."};
constexpr Step load_it{Action::load, {}, "Load the eye, then measure it again."};
constexpr Step milk_out{Action::smooth,
                        {MarkName::far_throat},
                        "Stroke the slack cover along to the line's other end.",
                        Part::cover};

constexpr std::array steps_through{
    knot_first,
    mark_cover,
    Step{Action::draw_core,
         {MarkName::far_throat},
         "Open the cover at the far throat without breaking a yarn and take the core out there, "
         "back to its end. Stroke the cover smooth from the slip knot to the hole."},
    Step{Action::mark,
         {},
         "Mark the core where it comes out: that is its own far-throat mark. Push the cover back "
         "and put the other marks on the bare core: the taper start from its end, and the entry, "
         "{entry} further on, the bury end and the exit.",
         Part::core},
    Step{Action::fit_first,
         {},
         "Put on now what this eye is to hold: nothing closed can be added "
         "once the core goes on."},
    Step{Action::lead_in,
         {MarkName::near_throat, MarkName::far_throat},
         "Send the core's tail back into the cover at the near throat and along inside the whole "
         "eye. Bring it out at the far throat by the hole that the core came out of.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Pull it through until the core's far-throat mark lies at the cover's near-throat mark. "
         "Hold both there and stroke the eye's cover from the near throat to the far one. The eye "
         "is {eye} from crown to throat, and core and cover both run round it.",
         Part::cover},
    Step{Action::tape,
         {MarkName::near_throat},
         "Tie a thread round the core's tail where it leaves the cover.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::core_entry, MarkName::exit},
         "Lead the core's tail into the standing core at the entry, along inside, and out at the "
         "exit, {exit} further on.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::core_entry},
         "Draw on it until the thread lies at the entry.",
         Part::core},
    thin_core,
    Step{Action::bury,
         {MarkName::core_entry, MarkName::bury_end},
         "Hold thread and entry together and stroke the core from there to the exit until the "
         "tail's end has gone in.",
         Part::core},
    Step{Action::taper,
         {MarkName::near_throat},
         "The cover's own tail carries nothing: unlay it to the near throat, cut it to a few "
         "diameters and thin it to nothing, so that it lies along the core.",
         Part::cover},
    Step{Action::smooth,
         {MarkName::exit, MarkName::far_throat},
         "Work the cover down from the slip knot, a little at a time, over the buried tail, the "
         "crossing and its own tail, until the throats meet. Do not force it: a cover drawn tight "
         "over the eye takes load that is not its own.",
         Part::cover},
    stitch_it,
    load_it,
    milk_out};

constexpr std::array steps_kept{
    knot_first,
    mark_cover,
    Step{Action::draw_core,
         {MarkName::near_throat},
         "Open the cover at the near throat and take the core's tail out there, back to its end. "
         "Round the eye core and cover stay as they are."},
    Step{Action::mark, {MarkName::near_throat}, "Mark the core where it comes out.", Part::core},
    Step{Action::mark,
         {MarkName::cover_tail_end},
         "Mark where the cover's own tail will end, {cover_tail} from the near throat.",
         Part::cover},
    Step{Action::cut,
         {MarkName::cover_tail_end},
         "Cut the cover's tail off there and take out half of its strands, a pair at a time.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::near_throat, MarkName::cover_tail_end},
         "Lead it into the core's tail where that leaves the cover, along inside, and out again "
         "where its end comes to lie.",
         Part::cover},
    Step{Action::taper, {MarkName::cover_tail_end}, "Cut its end to a slant.", Part::cover},
    Step{Action::bury,
         {MarkName::near_throat, MarkName::cover_tail_end},
         "Stroke the core's tail over it until it has gone in: cover and core are one tail now.",
         Part::cover},
    Step{Action::mark,
         {},
         "Open the cover at the far throat and lift the standing core out of it in a bight. Mark "
         "the core there at the far throat, the bury end and the exit, and its tail at the taper "
         "start.",
         Part::core},
    Step{Action::fit_first,
         {},
         "Put on now what this eye is to hold: nothing closed can be added "
         "once the core goes on."},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Lead the core's tail in at the far throat, into the standing core, along inside, and out "
         "at the exit, {exit} further on.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw it through until the throats meet: the eye is {eye} from crown to throat."},
    thin_core,
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Hold the throat and stroke the core from there to the exit until the tail's end has gone "
         "in.",
         Part::core},
    Step{Action::smooth,
         {MarkName::exit, MarkName::far_throat},
         "Let the bight slip back into the cover. Work the cover down from the slip knot until it "
         "lies without slack up to the throat. Do not force it.",
         Part::cover},
    stitch_it,
    load_it,
    milk_out};

/// The cover goes on over the swollen core.
Length over_cover(Length diameter, Length core_diameter) {
    const double ratio = core_diameter / diameter;
    return diameter_over_bury(diameter, ratio * ratio);
}

/// The crossing lies at the entry, a short section of the fid below the core's far-throat mark;
/// the loop that it closes is longer by that much, and half of it lies in either leg below the
/// throat.
End through_the_eye(const Request& request, const EyePart& eye_part, const BuryPart& bury,
                    const SourcedLength& entry) {
    End end = eye_with_bury(request, eye_part, bury, entry.length);
    end.add(row_of(Item::crossing_below, times(0.5, entry)));
    end.steps = steps_through;
    return end;
}

/// The cover's tail, as much of it as is kept, goes into the core's where that leaves the cover. It
/// is no longer than the tail.
End kept_in_the_eye(const Request& request, const EyePart& eye_part, const BuryPart& bury,
                    Length usual_cover_tail) {
    End end = eye_with_bury(request, eye_part, bury);
    const Length cover_tail = std::min(usual_cover_tail, bury.facts.tail);
    const Nanometres near_throat = end.standing_mark - to_nanometres(eye_part.facts.rope_round);
    end.add(Mark{MarkName::cover_tail_end, near_throat - to_nanometres(cover_tail)});
    end.cover = CoverFacts{{}, cover_tail};
    end.steps = steps_kept;
    return end;
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
    const auto entry = need.length(FigureId::short_section, diameter);
    const Length cover_tail = need.figure(FigureId::cover_tail).length(diameter);
    if (need.failed()) {
        return need.fault();
    }
    const bool kept = request.fields.has(way) && request.fields.at(way) > 0.5;
    End end = kept ? kept_in_the_eye(request, eye_part, bury, cover_tail)
                   : through_the_eye(request, eye_part, bury, entry);
    add_slip_knot(end, request);
    add_small_rope_caution(end, request,
                           "the core of covered rope this thin is too small for most hands: "
                           "consider a stripped-eye or a knot");
    add_core_caution(end, core_part,
                     "the core's diameter is assumed, not known: measure it and give it as core, "
                     "for it decides the take-up and the least tail");
    return end;
}

} // namespace

Kind core_eye() {
    return {{.name = "core-eye",
             .title = "eye splice, the core into itself under its cover",
             .datum = "inside of the eye's crown",
             .constructions = Constructions(Construction::core_dependent),
             .fields = fields,
             .families = {"buries"}},
            work_out};
}

} // namespace libsplice
