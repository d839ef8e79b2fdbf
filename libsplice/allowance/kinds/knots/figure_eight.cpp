// figure-eight: a stopper knot, measured from its face.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { set, stub };
constexpr std::array fields{field::set, field::stub};

constexpr std::array steps{
    Step{Action::reeve,
         {},
         "Put the rope through its hole, ball or cleat first: the knot does not go back through."},
    Step{Action::tie,
         {MarkName::knot_face},
         "From the face mark make a loop, take the end round behind the standing part, over, and "
         "down through the loop: the shape of an eight."},
    Step{Action::draw_up,
         {},
         "Draw it up from both sides until the face lies on its mark and {stub} is left beyond the "
         "knot."},
    Step{Action::load,
         {},
         "Load it against what it stops, and see that it can neither slip nor pull in."}};

Result<Allowance> work_out(const Request& request) {
    return stopper_knot(request, {set, stub}, 4.0, steps);
}

} // namespace

Kind figure_eight() {
    return {{"figure-eight", "stopper knot in the shape of an eight", "face of the knot",
             ropes_and_shock_cord, fields},
            work_out};
}

} // namespace libsplice
