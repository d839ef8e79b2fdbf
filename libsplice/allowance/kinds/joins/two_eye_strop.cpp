// two-eye-strop: a strop made whole, a locked and buried eye at each end.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { eye, pin, tail, taper, exit, settled, pairs };
constexpr std::array fields{field::eye_of("5 times the pin, at least 8 D"),
                            field::pin,
                            field::tail,
                            field::taper,
                            field::exit,
                            field::settled,
                            field::pairs};

constexpr std::array steps{
    Step{Action::mark,
         {},
         "Put the marks of both sides on now at the pull to mark at: from the tail "
         "end on they run alike on both sides."},
    Step{Action::cut, {}, "Tape both ends and cut them square, now that the marks are on."},
    Step{Action::pass_tail_through_host,
         {MarkName::far_throat, MarkName::near_throat},
         "First eye: pass the tail through the rope at the far throat until the near throat meets "
         "it."},
    Step{Action::pass_line_through_tail,
         {MarkName::near_throat},
         "Pass the whole of the other end, still thin, through the tail beside the near throat."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw up to an eye of {eye}."},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin this tail from its taper start, a strand of each hand at every drop-pair mark, but "
         "do not bury it yet: the strop must stay thin for the second eye."},
    Step{Action::fit_first, {}, "Put on what has to lie between the eyes or in the second one."},
    Step{Action::pass_tail_through_host,
         {MarkName::far_throat, MarkName::near_throat},
         "Second eye: the other end is closed, so pass the tail through at the far throat."},
    Step{Action::turn_eye_through,
         {MarkName::near_throat},
         "Draw the whole eye through the opening beside the near throat, as a sleeve is turned."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Work out the half turn."},
    Step{Action::taper, {MarkName::taper_start}, "Thin the second tail."},
    Step{Action::measure,
         {},
         "Hang the strop by its two crowns and pull: far throat to far throat, less what both "
         "buries will take, must agree before anything is hidden."},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Bury both tails from their throats to their exits, {exit} away."},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Smooth the rope over them in turns so that neither drags the other out. The two ends "
         "must not lie over each other."},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Lock-stitch both from {stitch_start} to {stitch_end} beyond the throat."},
    Step{Action::load,
         {},
         "Load the strop in one pull, both eyes on their pins, and measure from crown to crown."}};

Result<End> work_out(const Request& request) {
    auto allowance = locked_eye_with_bury(request, {eye, pin}, {tail, taper, exit, settled, pairs});
    if (allowance) {
        count_both_sides(*allowance);
        allowance->steps = steps;
    }
    return allowance;
}

} // namespace

Kind two_eye_strop() {
    return {{.name = "two-eye-strop",
             .title = "strop made whole, a locked eye at each end",
             .datum = "inside of the crown of either eye",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .reach = Reach::both_ends,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
