// rolling-hitch: riding turns that grip a spar or a rope against a pull along it.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { spar, turns, stub };
constexpr std::array fields{field::spar, field::turns_of("the table's figure, 3", 3.0),
                            field::knot_stub};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Start at the load-side mark and take all but one of the {turns} turns towards the pull, "
         "each crossing over the standing part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take the last turn on the far side of the standing part and tuck the end under it."},
    Step{Action::draw_up,
         {},
         "Draw the turns up side by side before any load comes on, with {stub} left."},
    Step{Action::load,
         {},
         "Pull along the spar towards the riding turns, gently at first; it holds in that "
         "direction only."}};

Result<Allowance> work_out(const Request& request) {
    return hitch(request, {spar, turns, stub}, {Span::Form::crossed, 2.0}, steps);
}

} // namespace

Kind rolling_hitch() {
    return {{"rolling-hitch", "hitch that grips against a pull along the spar",
             "where the standing part leaves the first turn", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
