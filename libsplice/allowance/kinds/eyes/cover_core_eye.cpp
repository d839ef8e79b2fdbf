// cover-core-eye: in double braid the cover's tail goes into the core and the core's into the
// cover.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration tail_field{"tail",
                                      "from the end to the reference mark, where the eye begins",
                                      Dimension::length,
                                      0.005,
                                      20.0,
                                      "the rule's tail"};
constexpr FieldDeclaration exit_field{
    "exit",
    "along the core, from where the cover's tail enters it to where it comes out",
    Dimension::length,
    0.005,
    40.0,
    "the rule's exit"};

constexpr FieldDeclaration core_out_field{
    "core_out",
    "from the far throat to where the core's tail, led round the eye, comes out of the cover",
    Dimension::length,
    0.001,
    20.0,
    "the rule's distance"};

enum Field : std::size_t { eye, pin, tail, exit, core_out };
constexpr std::array fields{field::eye, field::pin, tail_field, exit_field, core_out_field};

constexpr std::array steps{
    Step{Action::slip_knot,
         {},
         "Tie a slip knot {slip_knot} from the end. It keeps cover and core together in the "
         "standing part while you work."},
    Step{Action::mark,
         {MarkName::taper_start, MarkName::near_throat, MarkName::far_throat, MarkName::core_out},
         "Tape the end. Mark the cover at the taper start, the near throat, the far throat, and "
         "{core_out} beyond it.",
         Part::cover},
    Step{Action::draw_core,
         {MarkName::far_throat},
         "Open the cover at the far throat without breaking a yarn and take the core out there, "
         "back to its end. Stroke the cover smooth from the slip knot to the hole."},
    Step{Action::mark,
         {MarkName::far_throat, MarkName::core_entry, MarkName::exit},
         "Mark the core where it comes out. Push the cover back and mark on the bare core the "
         "entry, {entry} further on, and the exit.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the cover's tail from its taper-start mark to the end.",
         Part::cover},
    Step{Action::fit_first,
         {},
         "Put on now what this eye is to hold: nothing closed can be added "
         "once the cover goes on."},
    Step{Action::lead_in,
         {MarkName::core_entry, MarkName::exit},
         "Lead the cover's tail into the core at the entry, along inside, and out at the exit.",
         Part::cover},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::core_entry},
         "Draw on it until the cover's near-throat mark lies at the core's entry. This is the "
         "crossing.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::near_throat, MarkName::core_out},
         "Send the core's tail into the cover hard by the crossing, round the eye inside it, past "
         "the far throat, and out {core_out} beyond.",
         Part::core},
    Step{Action::draw_up,
         {},
         "Draw on both tails in turn until the crossing is tight and core and cover lie equally "
         "long round the eye."},
    Step{Action::bury,
         {MarkName::core_entry, MarkName::exit},
         "Hold the crossing and stroke the core from there to its exit until the cover's tail has "
         "gone in.",
         Part::cover},
    Step{Action::taper,
         {MarkName::far_throat},
         "Cut the core's tail to the length that will lie inside, and thin it to its end.",
         Part::core},
    Step{Action::bury,
         {MarkName::near_throat, MarkName::core_out},
         "Stroke the eye's cover from the crossing to the far throat and on, until the core's tail "
         "has gone in.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Work the cover down from the slip knot, harder each time, until the crossing goes under "
         "it and comes to lie at the far throat."},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Stitch through the throat: three stitches along the rope, three more a quarter turn "
         "round, over {stitch_end}. Undo the slip knot."},
    Step{Action::load, {}, "Load the eye, then measure it again."},
    Step{Action::smooth,
         {MarkName::far_throat},
         "Stroke the slack cover along to the line's other end.",
         Part::cover}};

Result<End> work_out(const Request& request) {
    auto allowance = covered_eye(request, {{eye, pin}, tail, exit, core_out});
    if (allowance) {
        add_stitching(*allowance, request, request.rope.counting_diameter());
        add_small_rope_caution(*allowance, request,
                               "in rope this thin cover and core are too fine to be led into each "
                               "other: consider a stripped-eye or a knot");
        allowance->steps = steps;
    }
    return allowance;
}

} // namespace

Kind cover_core_eye() {
    return {{"cover-core-eye", "eye splice in double braid, cover and core into each other",
             "inside of the eye's crown", Constructions(Construction::double_braid), fields},
            work_out};
}

} // namespace libsplice
