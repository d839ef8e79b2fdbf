// buried-eye: the tail is led back inside the hollow braid, tapered and lock-stitched.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { eye, pin, tail, taper, exit, settled, pairs };
constexpr std::array fields{field::eye,  field::pin,     field::tail, field::taper,
                            field::exit, field::settled, field::pairs};

constexpr std::array steps{
    Step{Action::mark, {}, "Put the marks on at the pull to mark at."},
    Step{Action::cut, {}, "Tape the end and cut it square, now that the marks are on."},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "At the far throat lead the fid into the middle of the rope, along inside it, and out at "
         "the exit mark, {exit} from the throat."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw the tail through until near throat and far throat meet."},
    Step{Action::measure, {}, "Check the eye: {eye} from the inside of the crown to the throat."},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin what hangs out, from the taper start on: at each drop-pair mark pick out one strand "
         "of each hand, side by side, and cut both off there. What is left at the end goes in with "
         "them."},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Hold the throat and smooth the rope over the tail, away from the eye, until the end "
         "slips inside and stays short of the exit. It should lie near the bury-end mark."},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Lock-stitch through tail and both walls from {stitch_start} to {stitch_end} beyond the "
         "throat; send half of the passes back at right angles. With no load on the rope at the "
         "throat nothing else holds this eye: do not leave the stitching out."},
    Step{Action::load, {}, "Load the eye, then measure it again."}};

Result<End> work_out(const Request& request) {
    auto allowance = eye_with_bury(request, {eye, pin}, {tail, taper, exit, settled, pairs},
                                   request.rope.counting_diameter());
    if (allowance) {
        allowance->steps = steps;
    }
    return allowance;
}

} // namespace

Kind buried_eye() {
    return {{.name = "buried-eye",
             .title = "eye splice, the tail buried in the hollow braid and lock-stitched",
             .datum = "inside of the eye's crown",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
