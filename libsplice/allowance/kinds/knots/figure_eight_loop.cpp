// figure-eight-loop: a fixed loop of a figure-eight in doubled rope.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/loop_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { loop, pin, stub };
constexpr std::array fields{field::loop, field::pin, field::stub};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::knot_standing},
         "At the mark on the knot's standing side tie a loose figure-eight in the single rope."},
    Step{Action::fit_first,
         {},
         "Pass the end round its pin or through its fitting, so that the loop is {eye} from its "
         "crown to the knot."},
    Step{Action::tie,
         {MarkName::knot_standing},
         "Follow the figure-eight back with the end, beside the first part all the way, until it "
         "comes out beside the standing part."},
    Step{Action::draw_up,
         {},
         "Take out every crossing, draw the four parts up one by one, and leave {stub} beyond the "
         "knot."},
    Step{
        Action::load, {}, "Load it, then measure the loop: the knot gives rope to it as it sets."}};

Result<Allowance> work_out(const Request& request) {
    return loop_knot(request, {loop, pin, stub}, {Span::Form::doubled, 4.0}, steps,
                     KnotLies::both_sides);
}

} // namespace

Kind figure_eight_loop() {
    return {{"figure-eight-loop", "fixed loop of a figure-eight in doubled rope",
             "inside of the loop's crown, loaded on its pin", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
