// core-to-core: the bearing cores of two covered ends led inside each other, covers butted over
// them.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { tail, taper, exit, settled, core, pairs, strands };
constexpr std::array fields{field::tail, field::taper, field::exit,   field::settled,
                            field::core, field::pairs, field::strands};

constexpr std::array steps{
    Step{Action::fit_first, {}, "Put on the line what has to be there before it is closed."},
    Step{Action::slip_knot, {}, "On each side tie a slip knot ten fids from the end."},
    Step{Action::mark, {MarkName::join}, "Mark each cover at the join mark.", Part::cover},
    Step{Action::draw_core,
         {MarkName::join},
         "Open each cover at the join mark and take the core out there, back to its end. Push the "
         "empty covers back out of the way."},
    Step{Action::mark,
         {},
         "Put the marks on the bare cores with the marking tension on them.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::join, MarkName::exit},
         "Lead the tail of one core into the other at that one's join mark and out at its exit "
         "mark. Do the same the other way round.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::join},
         "Draw both through until the two join marks meet.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin what hangs out of each core from the taper-start mark to its end, one strand of "
         "each hand at a time. If there are drop-pair marks, do it there.",
         Part::core},
    Step{Action::bury,
         {MarkName::join, MarkName::bury_end},
         "Stroke the cores outwards from the join until both tails have gone in.",
         Part::core},
    Step{Action::stitch,
         {MarkName::join},
         "Lock-stitch both sides from {stitch_start} to {stitch_end} beyond the join.",
         Part::core},
    Step{Action::load, {}, "Pull on the join."},
    Step{Action::smooth,
         {MarkName::exit, MarkName::join},
         "Work each cover from its slip knot towards the join.",
         Part::cover},
    Step{Action::cut,
         {MarkName::join},
         "Cut the two covers so that they butt at the join.",
         Part::cover},
    Step{
        Action::stitch, {MarkName::join}, "Stitch them end to end, through the core.", Part::cover},
    Step{Action::whip,
         {MarkName::join},
         "Whip over the butt for a few diameters each way and undo the slip knots."},
    Step{Action::measure, {}, "Load the closed line, then measure round it again."}};

Result<End> work_out(const Request& request) {
    const auto core_part = read_core(request, core);
    if (!core_part) {
        return Unexpected(core_part.error());
    }
    Host host = host_of(core_part->diameter);
    host.counted = request.rope.counting_diameter();
    host.seen = Span::Form::core;
    // The cover goes on over the swollen core.
    const double ratio = core_part->diameter / host.counted;
    host.over = diameter_over_bury(host.counted, ratio * ratio);
    const auto bury = read_bury(request, {tail, taper, exit, settled, pairs, strands}, host);
    if (!bury) {
        return Unexpected(bury.error());
    }
    End side = buried_side(request, *bury, MarkName::join);
    add_stitching(side, request, core_part->diameter);
    add_grip(side, *bury, request);
    add_retained(side, request);
    add_core_caution(side, *core_part);
    add_core_alone(side, request);
    side.steps = steps;
    count_both_sides(side);
    return side;
}

} // namespace

Kind core_to_core() {
    return {
        {.name = "core-to-core",
         .title = "two covered ends joined by their cores, the covers butted",
         .datum = "round the closed line, in use; the ends meet at the join marks",
         .constructions = Constructions(Construction::double_braid, Construction::core_dependent),
         .fields = fields,
         .reach = Reach::both_ends,
         .families = {"buries"}},
        work_out};
}

} // namespace libsplice
