// bowline: a fixed loop knot whose tail lies back inside the loop.
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
         "At the standing-side mark twist a small turn into the standing part, its end side on "
         "top."},
    Step{Action::tie,
         {MarkName::loop_far},
         "Bring the end up through the turn from behind, round the back of the standing part, and "
         "down through the turn again, so that it lies inside the loop."},
    Step{Action::draw_up,
         {},
         "Draw up standing part against both legs of the loop. The loop measures {eye} from its "
         "crown to the knot; {stub} of tail lies inside it."},
    Step{Action::load, {}, "Load it, then measure the loop again: a bowline settles."}};

Result<Allowance> work_out(const Request& request) {
    return loop_knot(request, {loop, pin, stub}, {Span::Form::nipped, 1.0}, steps);
}

} // namespace

Kind bowline() {
    return {{"bowline", "fixed loop knot", "inside of the loop's crown, loaded on its pin",
             fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
