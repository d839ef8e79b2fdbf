// The stopper knots: one row each.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { set, tail, hole };
constexpr std::array fields{field::set, field::knot_tail, field::hole};

/// A stopper knot: what it is, and how it is tied.
struct StopperKnot {
    std::string_view name;
    std::string_view title;
    Constructions constructions;
    double crossings; ///< of its plainest picture
    Steps steps;
    Steps steps_elastic = {}; ///< in shock cord; empty: as in rope
};

constexpr std::array figure_eight{
    Step{Action::reeve,
         {},
         "Lead the rope through its hole, block or cleat first: the knot does not go back "
         "through."},
    Step{Action::tie,
         {MarkName::knot_face},
         "From the face mark make a loop, take the end round behind the standing part, over, and "
         "down through the loop: the shape of an eight."},
    Step{Action::draw_up,
         {},
         "Draw it up from both sides until the face lies on its mark and {tail} is left beyond the "
         "knot."},
    Step{Action::load,
         {},
         "Load it against what it stops, and see that it can neither slip nor pull in."}};

constexpr std::array double_overhand{
    Step{Action::reeve,
         {},
         "Lead the rope through its hole, ball or cleat before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark cross the end over the standing part and pass it through the loop "
         "twice, the same way round."},
    Step{Action::draw_up,
         {},
         "Pull the two ends apart slowly and evenly, so that the loop rolls over into two turns "
         "that lie side by side."},
    Step{
        Action::draw_up,
        {},
        "Work the face on to its mark, {tail} left beyond the knot, and set it with a hard pull."}};

constexpr std::array double_overhand_elastic{
    Step{
        Action::reeve, {}, "Lead the cord through its hole, ball or hook before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark, made with the cord slack, pass the end twice through a loop round the "
         "standing part."},
    Step{Action::draw_up,
         {},
         "Stretch the cord on both sides of the knot and draw it up under that stretch: knotted "
         "slack, it works loose."},
    Step{Action::measure,
         {},
         "Let go and measure: {tail} beyond the knot with the cord at rest; then stretch it a few "
         "times and look again."}};

constexpr std::array overhand{
    Step{Action::reeve,
         {},
         "Lead the rope through its hole, block or cleat before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark cross the end over the standing part, take it round behind and out "
         "through the loop so made."},
    Step{Action::draw_up,
         {},
         "Hold the face on its mark and draw the end up until {tail} is left beyond the knot."},
    Step{Action::load,
         {},
         "Pull the knot hard against its hole: it is the smallest stopper and jams; if it goes in, "
         "tie a bigger one or put a ball on."}};

constexpr std::array stevedore{
    Step{Action::reeve, {}, "Lead the rope through its hole or block before anything is tied."},
    Step{Action::tie,
         {MarkName::knot_face},
         "At the face mark make a loop and take the end twice right round the standing part, a "
         "turn more than for a figure-eight."},
    Step{Action::tie, {MarkName::knot_face}, "Bring the end back and down through the loop."},
    Step{Action::draw_up,
         {},
         "Draw up slowly, the turns side by side, with the face on its mark and {tail} left beyond "
         "the knot."},
    Step{Action::load,
         {},
         "Load it: its face draws flat against the hole, and it comes undone more easily than the "
         "smaller stoppers."}};

// The crossings: these are the knots 4_1, 5_1, 3_1 and 6_1 of the knot tables once their ends are
// joined.
constexpr std::array knots{
    StopperKnot{.name = "figure-eight",
                .title = "stopper knot in the shape of an eight",
                .constructions = ropes_and_shock_cord,
                .crossings = 4.0,
                .steps = figure_eight},
    StopperKnot{.name = "double-overhand",
                .title = "stopper knot of two turns, the widest of those here",
                .constructions = ropes_and_shock_cord,
                .crossings = 5.0,
                .steps = double_overhand,
                .steps_elastic = double_overhand_elastic},
    StopperKnot{.name = "overhand",
                .title = "the simplest stopper knot",
                .constructions = ropes_and_shock_cord,
                .crossings = 3.0,
                .steps = overhand},
    StopperKnot{.name = "stevedore",
                .title = "stopper knot, a figure-eight with a turn more: longer and no wider",
                .constructions = fibre_ropes,
                .crossings = 6.0,
                .steps = stevedore},
};

Result<End> work_out(const StopperKnot& knot, const Request& request) {
    const bool elastic = request.rope.construction == Construction::shock_cord;
    return lay_stopper_knot(request, {set, tail, {}, hole}, knot.crossings,
                            elastic && !knot.steps_elastic.empty() ? knot.steps_elastic
                                                                   : knot.steps);
}

} // namespace

Kinds stopper_knots() {
    Kinds kinds;
    for (const StopperKnot& knot : knots) {
        kinds.push_back({{.name = knot.name,
                          .title = knot.title,
                          .datum = "face of the knot",
                          .constructions = knot.constructions,
                          .fields = fields,
                          .families = {"stopper-knots"}},
                         [&knot](const Request& request) {
                             return work_out(knot, request);
                         }});
    }
    return kinds;
}

} // namespace libsplice
