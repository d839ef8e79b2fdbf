// double-bowline: a bowline with two turns in its standing part.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/loop_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { loop, pin, stub };
constexpr std::array fields{field::loop, field::pin, field::stub};

constexpr std::array steps{
    Step{Action::fit_first,
         {},
         "Put on the line and through the fitting all that has to be there before the loop is "
         "closed."},
    Step{Action::tie,
         {MarkName::loop_far},
         "At the standing-side mark lay two small turns into the standing part, one on the other, "
         "both the same way round."},
    Step{Action::tie,
         {MarkName::loop_far},
         "Bring the end up through both turns from behind, round the standing part, and down "
         "through both again."},
    Step{Action::draw_up,
         {},
         "Draw up the two turns evenly, then the standing part against the loop's legs; {stub} of "
         "tail lies inside the loop."},
    Step{Action::load,
         {},
         "Load it and measure {eye} from the crown to the knot: two turns settle more than one."}};

Result<Allowance> work_out(const Request& request) {
    return loop_knot(request, {loop, pin, stub}, {Span::Form::nipped, 2.0}, steps);
}

} // namespace

Kind double_bowline() {
    return {{"double-bowline", "fixed loop knot, a bowline with two turns",
             "inside of the loop's crown, loaded on its pin", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
