// The words of the actions and of the parts of a rope.
#include "libsplice/allowance/action.h"

namespace libsplice {

namespace {

constexpr std::array table{
    ActionDeclaration{Action::mark, "mark", "the marks are put on"},
    ActionDeclaration{Action::tape, "tape", "a turn of tape at the mark, or round the end"},
    ActionDeclaration{Action::cut, "cut", "the part is cut through at the mark"},
    ActionDeclaration{Action::trim, "trim",
                      "the surplus of the end made last is cut off at its tail-end mark"},
    ActionDeclaration{Action::whip, "whip", "bound round with thread"},
    ActionDeclaration{Action::seal, "seal", "the fibres' ends are melted together"},
    ActionDeclaration{Action::stitch, "stitch", "sewn through"},
    ActionDeclaration{Action::seize, "seize", "two parts are bound together"},
    ActionDeclaration{Action::unlay, "unlay",
                      "the strands are opened from the tail's end to the mark"},
    ActionDeclaration{Action::strip, "strip", "the cover is taken off"},
    ActionDeclaration{Action::draw_core, "draw_core",
                      "the core is drawn out of the cover at the mark"},
    ActionDeclaration{Action::slip_knot, "slip_knot",
                      "a slip knot keeps cover and core from shifting in the standing part"},
    ActionDeclaration{Action::fit_first, "fit_first",
                      "what must be on the rope before the end closes is put on"},
    ActionDeclaration{Action::taper, "taper",
                      "the part is thinned from the mark to its end, which hangs out"},
    ActionDeclaration{Action::lead_in, "lead_in",
                      "the tail is led into the host at the first mark and out at the second"},
    ActionDeclaration{Action::pass_tail_through_host, "pass_tail_through_host",
                      "the tail goes through the host at the first mark, up to its own second"},
    ActionDeclaration{Action::pass_line_through_tail, "pass_line_through_tail",
                      "the line's other end, with all that is on it, goes through the tail"},
    ActionDeclaration{Action::turn_eye_through, "turn_eye_through",
                      "the eye itself goes through the rope at the mark"},
    ActionDeclaration{Action::bring_together, "bring_together", "the marks are brought together"},
    ActionDeclaration{Action::bury, "bury",
                      "the host is smoothed until the tail's end slips inside"},
    ActionDeclaration{Action::smooth, "smooth",
                      "host or cover is smoothed from the first mark towards the second"},
    ActionDeclaration{Action::tuck, "tuck", "strands are tucked from the mark on"},
    ActionDeclaration{Action::tie, "tie", "the knot or hitch is tied"},
    ActionDeclaration{Action::draw_up, "draw_up", "what is tied or passed is drawn tight"},
    ActionDeclaration{Action::press, "press", "a sleeve, shank or ring is pressed at the mark"},
    ActionDeclaration{Action::thread, "thread",
                      "a ball, sleeve or ring of the end itself is put on"},
    ActionDeclaration{Action::reeve, "reeve",
                      "the free end is led through all that the line runs through"},
    ActionDeclaration{Action::hang, "hang", "the eye or hitch is hung on what it holds"},
    ActionDeclaration{Action::load, "load", "loaded to the pull that the text names"},
    ActionDeclaration{Action::measure, "measure", "a length is read or a piece looked at"},
    ActionDeclaration{Action::cut_aboard, "cut_aboard", "the last cut, made aboard"},
    ActionDeclaration{Action::plain, "plain", "what the text says, without marks"},
};

constexpr bool is_in_order() {
    for (std::size_t i = 0; i < table.size(); ++i) {
        if (static_cast<std::size_t>(table.at(i).id) != i) {
            return false;
        }
    }
    return true;
}
static_assert(table.size() == static_cast<std::size_t>(Action::plain) + 1 && is_in_order());

constexpr std::array<std::string_view, 3> part_names{"rope", "core", "cover"};
static_assert(part_names.size() == static_cast<std::size_t>(Part::cover) + 1);

} // namespace

std::span<const ActionDeclaration> actions() {
    return table;
}

std::string_view name_of(Action action) {
    return table.at(static_cast<std::size_t>(action)).name;
}

std::string_view name_of(Part part) {
    return part_names.at(static_cast<std::size_t>(part));
}

} // namespace libsplice
