// stevedore: a bulky stopper knot, a figure-eight with a turn more.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { set, stub };
constexpr std::array fields{field::set, field::stub};

constexpr std::array steps{
    Step{Action::reeve, {}, "Lead the rope through its hole or block before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark make a loop and take the end twice round the standing part, a turn more "
         "than for a figure-eight."},
    Step{Action::tie, {MarkName::knot_face}, "Bring the end back and down through the loop."},
    Step{Action::draw_up,
         {},
         "Draw up slowly, the turns side by side, with the face on its mark and {stub} left beyond "
         "the knot."},
    Step{Action::load,
         {},
         "Load it: its face draws flat against the hole, and it comes undone more easily than the "
         "smaller stoppers."}};

Result<Allowance> work_out(const Request& request) {
    return stopper_knot(request, {set, stub}, 6.0, steps);
}

} // namespace

Kind stevedore() {
    return {{"stevedore", "bulky stopper knot, a figure-eight with a turn more", "face of the knot",
             fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
