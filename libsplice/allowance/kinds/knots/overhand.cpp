// overhand: the smallest stopper knot, measured from its face.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { set, stub };
constexpr std::array fields{field::set, field::stub};

constexpr std::array steps{
    Step{Action::reeve,
         {},
         "Lead the rope through its hole, block or cleat before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark cross the end over the standing part, take it round behind and out "
         "through the loop so made."},
    Step{Action::draw_up,
         {},
         "Hold the face on its mark and draw the end up until {stub} is left beyond the knot."},
    Step{Action::load,
         {},
         "Pull the knot hard against its hole: it is the smallest stopper and jams; if it goes in, "
         "tie a bigger one or put a ball on."}};

Result<Allowance> work_out(const Request& request) {
    return stopper_knot(request, {set, stub}, 3.0, steps);
}

} // namespace

Kind overhand() {
    return {
        {"overhand", "the simplest stopper knot", "face of the knot", ropes_and_shock_cord, fields},
        work_out};
}

} // namespace libsplice
