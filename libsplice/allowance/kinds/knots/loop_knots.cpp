// The loop knots: one row each.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/loop_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { loop, pin, tail };
constexpr std::array fields{field::loop, field::pin, field::knot_tail};
constexpr std::array noose_fields{field::loop_of("2 times the pin, at least 6 D"), field::pin,
                                  field::knot_tail};

/// A loop knot: what it is, how it lies, and how it is tied.
struct LoopKnot {
    std::string_view name;
    std::string_view title;
    std::string_view datum = "inside of the loop's crown, loaded on its pin";
    Constructions constructions;
    std::span<const FieldDeclaration> fields; ///< `loop`, `pin`, `tail`
    LoopShape shape;
    bool slides = false; ///< the loop closes on what it holds
    Steps steps;
    Steps steps_elastic = {}; ///< in shock cord; empty: as in rope
};

constexpr std::array bowline{
    Step{Action::fit_first,
         {},
         "Put on the line and through the fitting all that has to be there before the loop is "
         "closed."},
    Step{Action::tie,
         {MarkName::knot_standing},
         "At the mark on the knot's standing side twist a small turn into the rope, the loop's "
         "side of it on top."},
    Step{Action::tie,
         {MarkName::loop_near, MarkName::loop_far},
         "Bring the end up through the turn from behind, round the back of the standing part, and "
         "down through the turn again. It now lies inside the loop, and the two loop marks meet."},
    Step{Action::draw_up,
         {},
         "Draw up standing part against both legs of the loop. The loop measures {eye} from its "
         "crown to the knot; {tail} of tail lies inside it."},
    Step{Action::load, {}, "Load it, then measure the loop again: a bowline settles."}};

constexpr std::array figure_eight_loop{
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
         "Take out every crossing, draw the four parts up one by one, and leave {tail} beyond the "
         "knot."},
    Step{
        Action::load, {}, "Load it, then measure the loop: the knot gives rope to it as it sets."}};

constexpr std::array overhand_loop{
    Step{Action::fit_first,
         {},
         "Double the rope with its crown at the crown mark, and put the fitting on the bight if it "
         "cannot be hooked on later."},
    Step{Action::tie,
         {MarkName::knot_standing},
         "Tie an overhand knot in both parts together, the bight through last."},
    Step{Action::tie,
         {MarkName::knot_standing},
         "Slide the knot until the loop is {eye} from its crown to the knot, the parts side by "
         "side without a crossing."},
    Step{Action::draw_up,
         {},
         "Draw up each of the four parts; {tail} is left beside the standing part. It will not "
         "come undone again after a hard load."}};

constexpr std::array barrel_noose{
    Step{Action::fit_first,
         {},
         "Pass the end through the fitting and back to the standing part; the crown mark comes to "
         "the fitting."},
    Step{
        Action::tie,
        {MarkName::loop_near},
        "Take the end twice round the standing part and its own leg, working towards the fitting."},
    Step{Action::tie,
         {MarkName::loop_near},
         "Bring it through both turns, away from the fitting, and draw the barrel up until {tail} "
         "is left."},
    Step{Action::draw_up,
         {},
         "Slide the barrel down on its pin: the loop is {eye} from its crown to the barrel when it "
         "holds."},
    Step{Action::load, {}, "Load it, slide it down again and measure: a noose grips by closing."}};

constexpr std::array barrel_noose_elastic{
    Step{Action::fit_first,
         {},
         "Pass the end through the fitting and back beside the cord; marks are made with the cord "
         "slack."},
    Step{Action::tie,
         {MarkName::loop_near},
         "Take the end twice round the cord, working towards the fitting, and through both turns."},
    Step{Action::draw_up,
         {},
         "Draw the barrel up with the cord stretched, {tail} left beyond it, then slide it down on "
         "the fitting."},
    Step{Action::measure,
         {},
         "Let go, and measure the loop at rest: {eye} from its crown to the barrel."}};

constexpr std::array double_bowline{
    Step{Action::fit_first,
         {},
         "Put on the line and through the fitting all that has to be there before the loop is "
         "closed."},
    Step{Action::tie,
         {MarkName::knot_standing},
         "From the mark on the knot's standing side lay two small turns into the rope, towards the "
         "loop. Lay one on the other, both the same way round."},
    Step{Action::tie,
         {MarkName::loop_near, MarkName::loop_far},
         "Bring the end up through both turns from behind, round the standing part, and down "
         "through both again, until the two loop marks meet."},
    Step{Action::draw_up,
         {},
         "Draw up the two turns evenly, then the standing part against the loop's legs; {tail} of "
         "tail lies inside the loop."},
    Step{Action::load,
         {},
         "Load it and measure {eye} from the crown to the knot: two turns settle more than one."}};

constexpr std::array knots{
    LoopKnot{.name = "bowline",
             .title = "fixed loop knot",
             .constructions = fibre_ropes,
             .fields = fields,
             .shape = {Span::Form::nipped, 1.0, KnotLies::turned_in_standing_part},
             .steps = bowline},
    LoopKnot{.name = "figure-eight-loop",
             .title = "fixed loop of a figure-eight in doubled rope",
             .constructions = fibre_ropes,
             .fields = fields,
             .shape = {Span::Form::doubled, 4.0, KnotLies::both_sides},
             .steps = figure_eight_loop},
    LoopKnot{.name = "overhand-loop",
             .title = "fixed loop of an overhand knot in doubled rope",
             .constructions = ropes_and_shock_cord,
             .fields = fields,
             .shape = {Span::Form::doubled, 3.0, KnotLies::both_sides},
             .steps = overhand_loop},
    LoopKnot{.name = "barrel-noose",
             .title = "sliding loop on a barrel knot",
             .datum = "inside of the loop's crown, the noose closed on its pin",
             .constructions = ropes_and_shock_cord,
             .fields = noose_fields,
             .shape = {Span::Form::turns, 2.0, KnotLies::tail_side},
             .slides = true,
             .steps = barrel_noose,
             .steps_elastic = barrel_noose_elastic},
    LoopKnot{.name = "double-bowline",
             .title = "fixed loop knot, a bowline with two turns",
             .constructions = fibre_ropes,
             .fields = fields,
             .shape = {Span::Form::nipped, 2.0, KnotLies::turned_in_standing_part},
             .steps = double_bowline},
};

constexpr std::string_view closes_caution =
    "the noose closes on whatever it holds, and the line comes out longer: give the pin";

Result<End> work_out(const LoopKnot& knot, const Request& request) {
    const bool elastic = request.rope.construction == Construction::shock_cord;
    auto allowance =
        lay_loop(request, {loop, pin, tail}, knot.shape,
                 elastic && !knot.steps_elastic.empty() ? knot.steps_elastic : knot.steps);
    if (allowance && knot.slides && !request.fields.has(pin)) {
        allowance->add(Caution{closes_caution, cited_geometry});
    }
    return allowance;
}

} // namespace

Kinds loop_knots() {
    Kinds kinds;
    for (const LoopKnot& knot : knots) {
        kinds.push_back({{.name = knot.name,
                          .title = knot.title,
                          .datum = knot.datum,
                          .constructions = knot.constructions,
                          .fields = knot.fields,
                          .families = {"loop-knots"}},
                         [&knot](const Request& request) {
                             return work_out(knot, request);
                         }});
    }
    return kinds;
}

} // namespace libsplice
