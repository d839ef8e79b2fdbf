// parallel-core-eye: a core of straight yarns cannot be entered; it is drawn into the cover with
// the cover's tail.
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
constexpr FieldDeclaration exit_field{"exit",
                                      "from the throat to where the tails come out of the cover",
                                      Dimension::length,
                                      0.005,
                                      40.0,
                                      "the rule's exit"};

enum Field : std::size_t { eye, pin, tail, exit };
constexpr std::array fields{field::eye, field::pin, tail_field, exit_field};

constexpr std::array steps{
    Step{Action::slip_knot, {}, "Tie a slip knot {slip_knot} from the end."},
    Step{Action::tape, {}, "Tape the end hard: the core's yarns must not spread."},
    Step{Action::mark,
         {MarkName::near_throat, MarkName::far_throat, MarkName::exit},
         "Mark the cover at the near throat, the far throat and the exit.",
         Part::cover},
    Step{Action::draw_core,
         {MarkName::far_throat},
         "Draw the core out of the cover at the far throat and tape its end again."},
    Step{Action::mark,
         {MarkName::core_entry},
         "Bare the core as far as its entry mark, {entry} on, and mark it there.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Cut the cover's tail to a taper that starts five picks past the near throat, strands in "
         "pairs of opposite hand.",
         Part::cover},
    Step{Action::taper,
         {MarkName::taper_start},
         "Cut the core to a long slant over its last {taper} and tape it to the fid.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Lead the cover's tail in beside the core at the far throat, then the core after it, both "
         "out at the exit."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw them through until near throat and far throat meet and the eye is {eye}."},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::exit},
         "Hold the throat and smooth the cover down from the slip knot until both tails are drawn "
         "in; cut off flush what still shows at the exit."},
    Step{Action::stitch, {MarkName::far_throat}, "Stitch through the throat in two directions."},
    Step{Action::load,
         {},
         "Undo the slip knot, load the eye, measure it, and smooth the slack cover to the far "
         "end."}};

Result<End> work_out(const Request& request) {
    auto allowance = covered_eye(request, {{eye, pin}, tail, exit}, ExitFrom::throat);
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
