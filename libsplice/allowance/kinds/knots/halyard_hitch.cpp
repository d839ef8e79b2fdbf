// halyard-hitch: wraps round a shackle's bow, closed by a knot that jams on them.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { pin, turns, stub };
constexpr std::array fields{field::held_pin, field::turns_of("the table's figure, 2"),
                            field::knot_stub};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Put the load-side mark at the bow and wrap the end round it, {turns} wraps, working away "
         "from the standing part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end back over the wraps and once round the standing part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Lead the end under all the wraps, between them and the bow, and out on the far side."},
    Step{Action::draw_up,
         {},
         "Draw the wraps tight one by one, then the end, until the hitch sits hard on the bow with "
         "{stub} left."},
    Step{Action::load,
         {},
         "Load it and measure from the bow: it draws out most at its first load."}};

Result<Allowance> work_out(const Request& request) {
    return hitch(request, {pin, turns, stub, ValueName::pin_m}, {Span::Form::tucked, 1.0}, steps);
}

} // namespace

Kind halyard_hitch() {
    return {{"halyard-hitch", "compact hitch to the bow of a halyard shackle",
             "load side of the bow", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
