// endless-loop: one rope closed to a loop, its two tails buried past each other.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { tail, taper, exit, settled, pairs };
constexpr std::array fields{field::tail, field::taper, field::exit, field::settled, field::pairs};

constexpr std::array steps{
    Step{Action::mark,
         {},
         "Put the marks of both sides on at the pull to mark at: from the tail end "
         "on they run alike on both sides."},
    Step{Action::cut, {}, "Tape both ends and cut them square, now that the marks are on."},
    Step{Action::fit_first,
         {},
         "Thread on all that has to lie on the loop: nothing goes on once it is closed."},
    Step{Action::pass_tail_through_host,
         {MarkName::crossing},
         "Lay the two crossing marks side by side, the ends pointing past each other. Pass one end "
         "through the rope at the other's crossing mark, then the other through the first in the "
         "same way."},
    Step{Action::bring_together,
         {MarkName::crossing},
         "Draw up until the crossings touch. The loop now shows its round length."},
    Step{Action::draw_up,
         {},
         "Take out every turn: hang the loop up and let it settle before going on."},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin both tails: at each drop-pair mark cut out one strand of each hand, never two of "
         "one hand."},
    Step{Action::lead_in,
         {MarkName::crossing, MarkName::exit},
         "Bury each tail away from the crossing, to its exit {exit} from there, one to either "
         "side."},
    Step{Action::bury,
         {MarkName::crossing, MarkName::bury_end},
         "Smooth the rope over both in turns until the ends are swallowed. They must not meet."},
    Step{Action::stitch,
         {MarkName::crossing},
         "Lock-stitch on both sides of the crossing, from {stitch_start} to {stitch_end}, through "
         "tail and both walls."},
    Step{Action::load,
         {},
         "Load the loop between two pins, with the crossing and the tails' ends clear of both. The "
         "round length is twice the distance of the pins' centres and once round a circle of pin "
         "and rope together."}};

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    const auto bury = read_bury(request, {tail, taper, exit, settled, pairs}, host_of(diameter));
    if (!bury) {
        return Unexpected(bury.error());
    }
    End side = buried_side(request, *bury, MarkName::crossing);
    count_both_sides(side);
    add_crossing(side, 1.0, side.standing_mark, diameter);
    add_stitching(side, request, diameter);
    add_grip(side, *bury, request);
    add_retained(side, request);
    side.steps = steps;
    return side;
}

} // namespace

Kind endless_loop() {
    return {{.name = "endless-loop",
             .title = "loop closed by burying its two tails past each other",
             .datum = "round length of the loop in use, along the middle of its rope",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .reach = Reach::both_ends,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
