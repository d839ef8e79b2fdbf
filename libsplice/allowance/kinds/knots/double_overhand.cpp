// double-overhand: a stopper knot of two turns, the usual one in shock cord.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { set, stub };
constexpr std::array fields{field::set, field::stub};

constexpr std::array steps{
    Step{Action::reeve,
         {},
         "Lead the rope through its hole, ball or cleat before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark cross the end over the standing part and pass it through the loop "
         "twice, the same way round."},
    Step{Action::draw_up,
         {},
         "Pull the two ends apart slowly and evenly, so that the loop rolls over into two turns "
         "that lie side by side."},
    Step{
        Action::draw_up,
        {},
        "Work the face on to its mark, {stub} left beyond the knot, and set it with a hard pull."}};

constexpr std::array steps_elastic{
    Step{
        Action::reeve, {}, "Lead the cord through its hole, ball or hook before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark, made with the cord slack, pass the end twice through a loop round the "
         "standing part."},
    Step{Action::draw_up,
         {},
         "Stretch the cord on both sides of the knot and draw it up under that stretch: knotted "
         "slack, it works loose."},
    Step{Action::measure,
         {},
         "Let go and measure: {stub} beyond the knot with the cord at rest; then stretch it a few "
         "times and look again."}};

Result<Allowance> work_out(const Request& request) {
    const bool elastic = request.rope.construction == Construction::shock_cord;
    return stopper_knot(request, {set, stub}, 5.0, elastic ? steps_elastic : steps);
}

} // namespace

Kind double_overhand() {
    return {{"double-overhand", "stopper knot of two turns", "face of the knot",
             ropes_and_shock_cord, fields},
            work_out};
}

} // namespace libsplice
