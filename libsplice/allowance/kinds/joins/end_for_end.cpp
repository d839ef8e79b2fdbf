// end-for-end: double braid joined cover into core and core into cover; square plait pair by pair.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/bury_part.h"
#include "libsplice/allowance/parts/tuck_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { tail, taper, exit, settled, tucks, end_left, pick };
constexpr std::array fields{field::tail,  field::taper,    field::exit, field::settled,
                            field::tucks, field::end_left, field::pick};
constexpr std::size_t first_of_plait = tucks;

constexpr std::array steps_braid{
    Step{Action::fit_first, {}, "Put on the line what has to be there before it is closed."},
    Step{Action::slip_knot, {}, "On each side tie a slip knot five fids from the end."},
    Step{Action::mark,
         {MarkName::reference, MarkName::extraction},
         "Mark the cover at the reference mark, {tail} from its end, and at the extraction mark, "
         "{short_section} further.",
         Part::cover},
    Step{Action::draw_core,
         {MarkName::extraction},
         "At each extraction mark bend the rope, open the cover and draw the core out to its end."},
    Step{Action::mark,
         {MarkName::core_entry, MarkName::core_exit},
         "Where the core leaves the cover is its first mark; its entry mark lies {short_section} "
         "further in, and its exit mark {exit} from the extraction.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the end of each cover from the taper-start mark on.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::core_entry, MarkName::core_exit},
         "Lead each cover into the core of the other side at that core's entry mark and out at its "
         "exit mark.",
         Part::cover},
    Step{Action::bring_together,
         {MarkName::reference, MarkName::core_entry},
         "Draw it through until the reference mark meets the entry mark.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::extraction},
         "Lead each core back into the cover it now meets, in at the extraction mark and out "
         "beyond the tail inside.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::extraction},
         "Draw the two crossings together until they touch, evenly."},
    Step{Action::cut,
         {MarkName::extraction},
         "Cut the core's ends at a slant where they come out.",
         Part::core},
    Step{Action::bury,
         {MarkName::extraction},
         "Smooth each cover from its slip knot towards the join until crossings and tails are "
         "swallowed."},
    Step{Action::stitch, {MarkName::extraction}, "Stitch through the join."},
    Step{Action::load,
         {},
         "Undo the slip knots, load the closed line, then measure round it again."}};

constexpr std::array steps_plait{
    Step{Action::tape,
         {MarkName::unlay},
         "Tape both ends at their unlay marks, {@unlay to here} from the cut end."},
    Step{
        Action::unlay,
        {MarkName::unlay},
        "Unlay the strands to the marks and tape them in their four pairs, each pair of one hand."},
    Step{Action::bring_together,
         {MarkName::unlay},
         "Marry the two ends, pairs of one hand to pairs of the same hand, until the marks meet, "
         "and bind the middle."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Tuck each pair under pairs of its own hand in the other rope, following them: {tucks} "
         "full tucks a side, drawn up evenly."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Drop one strand of every pair and go on with single strands for {tucks_single} tucks."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Halve the strands that are left and tuck them {tucks_half} times more, so that the "
         "splice runs out thin. Leave {end_left} of each."},
    Step{Action::load,
         {},
         "Take the binding off, load the closed line, then measure round it again."}};

Result<End> side_of_plait(const Request& request) {
    const auto tuck_part = read_tucks(request, {tucks, end_left, pick});
    if (!tuck_part) {
        return Unexpected(tuck_part.error());
    }
    End side;
    side.standing_mark = add_tucks(side, *tuck_part, request);
    side.add(Mark{MarkName::unlay, side.standing_mark});
    side.add(Value{ValueName::tucks_single, tuck_part->singles});
    side.add(Value{ValueName::tucks_half, tuck_part->halves});
    side.steps = steps_plait;
    return side;
}

/// The two extraction marks meet: the cover up to its reference mark takes the place of the core
/// up to its entry mark, which lie a short section to either side of it.
Result<End> side_of_braid(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto bury =
        need.part(read_bury(request, {tail, taper, exit, settled}, host_of(diameter)));
    const auto section = need.length(FigureId::short_section, diameter);
    if (need.failed()) {
        return need.fault();
    }
    const Nanometres short_section = to_nanometres(section.length);

    End side;
    add_bury_rows(side, bury);
    side.add(row_of(Item::short_section, section));
    const Nanometres tail_end = add_cutting_loss(side, request, Cut::shears);
    const Nanometres reference = tail_end + to_nanometres(bury.facts.tail);
    side.standing_mark = reference + short_section;
    lay_tail(side, bury, request, tail_end);
    side.add(Mark{MarkName::reference, reference});
    side.add(Mark{MarkName::extraction, side.standing_mark});
    side.add(Mark{MarkName::core_entry, side.standing_mark + short_section});
    side.bury_reach += short_section;
    side.add(Mark{MarkName::core_exit, side.standing_mark + side.fid_reach});
    add_crossing(side, 2.0, side.standing_mark, diameter);
    side.add(Value{ValueName::short_section_m, section.length.si()});
    side.steps = steps_braid;
    return side;
}

Result<End> work_out(const Request& request) {
    const bool plait = request.rope.construction == Construction::eight_plait;
    if (auto fault = plait ? find_foreign_field(request, fields, {0, first_of_plait},
                                                "in 8-plait end-for-end")
                           : find_foreign_field(request, fields, {first_of_plait, fields.size()},
                                                "in double-braid end-for-end")) {
        return Unexpected(*std::move(fault));
    }
    auto side = plait ? side_of_plait(request) : side_of_braid(request);
    if (!side) {
        return side;
    }
    add_retained(*side, request);
    count_both_sides(*side);
    return side;
}

} // namespace

Kind end_for_end() {
    return {{"end-for-end", "two ends of double braid or square plait spliced into each other",
             "round the closed line, in use; the ends meet at their extraction or unlay marks",
             Constructions(Construction::double_braid, Construction::eight_plait), fields,
             Reach::both_ends},
            work_out};
}

} // namespace libsplice
