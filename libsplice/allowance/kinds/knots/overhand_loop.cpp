// overhand-loop: a fixed loop of an overhand knot in doubled rope.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/loop_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { loop, pin, stub };
constexpr std::array fields{field::loop, field::pin, field::stub};

constexpr std::array steps{
    Step{Action::fit_first,
         {},
         "Double the rope with its crown at the crown mark, and put the fitting on the bight if it "
         "cannot be hooked on later."},
    Step{Action::tie,
         {MarkName::crown},
         "Tie an overhand knot in both parts together, the bight through last."},
    Step{Action::tie,
         {MarkName::crown},
         "Slide the knot until the loop is {eye} from its crown to the knot, the parts side by "
         "side without a crossing."},
    Step{Action::draw_up,
         {},
         "Draw up each of the four parts; {stub} is left beside the standing part. It will not "
         "come undone again after a hard load."}};

Result<Allowance> work_out(const Request& request) {
    return loop_knot(request, {loop, pin, stub}, {Span::Form::doubled, 3.0}, steps,
                     KnotLies::both_sides);
}

} // namespace

Kind overhand_loop() {
    return {{"overhand-loop", "fixed loop of an overhand knot in doubled rope",
             "inside of the loop's crown, loaded on its pin", ropes_and_shock_cord, fields},
            work_out};
}

} // namespace libsplice
