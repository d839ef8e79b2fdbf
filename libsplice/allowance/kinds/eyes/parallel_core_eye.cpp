// parallel-core-eye: a core of straight yarns cannot be entered; it is led back round the eye and
// held under the cover.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/covered_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration tail_field{"tail",
                                      "from the end to the mark where the eye begins",
                                      Dimension::length,
                                      0.005,
                                      20.0,
                                      "the rule's tail"};
constexpr FieldDeclaration exit_field{
    "exit",
    "from the throat to where the core's tail comes out of the cover",
    Dimension::length,
    0.005,
    40.0,
    "the rule's exit"};

enum Field : std::size_t { eye, pin, tail, exit };
constexpr std::array fields{field::eye, field::pin, tail_field, exit_field};

constexpr std::array steps{
    Step{Action::slip_knot,
         {},
         "Tie a slip knot {slip_knot} from the end. It keeps cover and core together in the "
         "standing part while you work."},
    Step{Action::mark,
         {MarkName::near_throat, MarkName::far_throat, MarkName::exit},
         "Tape the end. Mark the cover at the near throat, the far throat and the exit.",
         Part::cover},
    Step{Action::draw_core,
         {MarkName::far_throat},
         "Open the cover at the far throat without breaking a yarn and take the core out there, "
         "back to its end. Tape the end hard: the yarns must not spread."},
    Step{Action::mark,
         {MarkName::taper_start, MarkName::far_throat, MarkName::core_entry},
         "Mark the core's slant, {taper} from its end. Stroke the cover smooth from the slip knot "
         "and mark the core where it comes out. Push "
         "the cover back and put a turn of tape on the core at its entry mark, {entry} further on.",
         Part::core},
    Step{Action::strip,
         {MarkName::core_entry},
         "Slit the wrapping that holds the yarns and take it off, from that tape to the end: left "
         "on, it lets the core slide.",
         Part::core},
    Step{Action::fit_first,
         {},
         "Put on now what this eye is to hold: once the core goes back in, nothing closed can be "
         "added."},
    Step{Action::lead_in,
         {MarkName::near_throat, MarkName::exit},
         "Send the core's tail into the cover at the near throat and along inside the whole eye. "
         "Bring it past the far throat and out at the exit, {exit} beyond it. Catch no yarn of the "
         "core that lies there already.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Draw a little more than {taper} of it out at the exit and cut that to a long slant.",
         Part::core},
    Step{Action::taper,
         {MarkName::near_throat},
         "From the near throat count five picks along the cover's tail and unlay it to there. Cut "
         "it to a slant that has run out after ten picks more.",
         Part::cover},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::core_entry},
         "Draw the core back until the tape at its entry mark lies at the near throat, and hold "
         "both there."},
    Step{Action::bury,
         {MarkName::near_throat, MarkName::exit},
         "Stroke the eye's cover from the near throat to the far throat and on to the exit until "
         "the core's end has gone in. The eye is {eye} from crown to throat.",
         Part::core},
    Step{Action::smooth,
         {MarkName::exit, MarkName::far_throat},
         "Work the cover down from the slip knot until the throats meet. The cover's own tail, "
         "which carries nothing, goes under it beside the core.",
         Part::cover},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Stitch through the throat, then again a quarter turn round. Undo the slip knot."},
    Step{Action::load, {}, "Load the eye, then measure it again."},
    Step{Action::smooth,
         {MarkName::far_throat},
         "Stroke the slack cover along to the line's other end.",
         Part::cover}};

Result<End> work_out(const Request& request) {
    auto allowance = covered_eye(request, {{eye, pin}, tail, exit, std::nullopt});
    if (allowance) {
        allowance->add(Caution{"what this splice takes out of the standing part is an estimate: "
                               "measure it on a test piece",
                               request.rules.need(FigureId::shortening)->source});
        allowance->steps = steps;
    }
    return allowance;
}

} // namespace

Kind parallel_core_eye() {
    return {{"parallel-core-eye", "eye splice in rope with a core of parallel yarns",
             "inside of the eye's crown", Constructions(Construction::parallel_core), fields},
            work_out};
}

} // namespace libsplice
