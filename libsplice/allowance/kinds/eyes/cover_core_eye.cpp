// cover-core-eye: in double braid the cover's tail goes into the core and the core's into the
// cover.
#include "libsplice/allowance/built_in_kinds.h"
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

enum Field : std::size_t { eye, pin, tail, exit };
constexpr std::array fields{field::eye, field::pin, tail_field, exit_field};

constexpr std::array steps{
    Step{Action::slip_knot, {}, "Tie a slip knot {slip_knot} from the end."},
    Step{Action::mark,
         {MarkName::near_throat, MarkName::far_throat},
         "Tape the end; mark the cover at the near throat, the reference, and at the far throat, "
         "where the core comes out.",
         Part::cover},
    Step{Action::draw_core,
         {MarkName::far_throat},
         "Bend the rope sharply at the far throat, part the cover's strands and draw the core out "
         "from the end to there."},
    Step{Action::mark,
         {MarkName::far_throat},
         "Mark the core where it leaves the cover.",
         Part::core},
    Step{Action::mark,
         {MarkName::core_entry, MarkName::exit},
         "Slide the cover back towards the knot to bare more core. Mark the core's entry {entry} "
         "on from its first mark, and the exit beyond it.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the cover's tail from the taper-start mark.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::core_entry, MarkName::exit},
         "Lead it into the core at the entry, along inside, and out at the exit.",
         Part::cover},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::core_entry},
         "Draw it through until the reference meets the entry.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::far_throat},
         "Lead the core's tail into the cover at the far throat and out beyond where the cover's "
         "tail ends, clear of the eye.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw both crossings together until they lie on one another."},
    Step{Action::taper,
         {MarkName::near_throat},
         "Thin the core's tail and cut it where it will end.",
         Part::core},
    Step{Action::smooth,
         {MarkName::crown},
         "Smooth the eye from its crown on both sides until both tails are swallowed.",
         Part::cover},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::exit},
         "Hold the crossing and milk the slack cover down from the slip knot, harder each time, "
         "until the crossing goes in and the throat is reached."},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Stitch through the throat, across and back, so that an unloaded eye cannot creep out. "
         "Undo the slip knot."},
    Step{Action::load, {}, "Load the eye and measure it."},
    Step{Action::smooth,
         {MarkName::far_throat},
         "Smooth the cover to the line's far end and trim there what comes out.",
         Part::cover}};

Result<End> work_out(const Request& request) {
    auto allowance = covered_eye(request, {{eye, pin}, tail, exit}, ExitFrom::core_entry);
    if (allowance) {
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
