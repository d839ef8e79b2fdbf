// buntline-hitch: a turn round the pin, and a clove hitch round the standing part inside it.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { pin, turns, stub };
constexpr std::array fields{field::held_pin, field::turns_of("the table's figure, 1"),
                            field::knot_stub};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Pass the end round the pin, {turns} turns, with the load-side mark where the standing "
         "part meets it."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end right round the standing part, going away from the pin."},
    Step{Action::tie,
         {MarkName::load_side},
         "Make a second turn on the pin's side of the first and bring the end out beneath it, so "
         "that the tail is trapped against the pin."},
    Step{Action::draw_up,
         {},
         "Draw up the two turns, slide them down on the pin and leave {stub}: under load it jams, "
         "and is not meant to be shaken out."}};

Result<Allowance> work_out(const Request& request) {
    return hitch(request, {pin, turns, stub, ValueName::pin_m}, {Span::Form::turns, 2.0}, steps);
}

} // namespace

Kind buntline_hitch() {
    return {{"buntline-hitch", "jamming hitch to a ring, pin or shackle",
             "load side of the pin or ring", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
