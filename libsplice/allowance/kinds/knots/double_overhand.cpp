// double-overhand: a stopper knot of two turns, the usual one in shock cord.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { set, stub };
constexpr std::array fields{field::set, field::stub};

constexpr std::array<std::string_view, 4> steps{
    "Lead the rope through its hole, ball or cleat before anything is tied.",
    "At the face mark cross the end over the standing part and pass it through the loop twice, the "
    "same way round.",
    "Pull the two ends apart slowly and evenly, so that the loop rolls over into two turns that "
    "lie side by side.",
    "Work the face on to its mark, {stub} left beyond the knot, and set it with a hard pull.",
};

constexpr std::array<std::string_view, 4> steps_elastic{
    "Lead the cord through its hole, ball or hook before anything is tied.",
    "At the face mark, made with the cord slack, pass the end twice through a loop round the "
    "standing part.",
    "Stretch the cord on both sides of the knot and draw it up under that stretch: knotted slack, "
    "it works loose.",
    "Let go and measure: {stub} beyond the knot with the cord at rest; then stretch it a few times "
    "and look again.",
};

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
