// end-for-end: double braid joined cover into core and core into cover; square plait pair by pair.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/bury_part.h"
#include "libsplice/allowance/parts/tuck_part.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

enum Field : std::size_t { tail, taper, exit, tucks, end_left, pick };
constexpr std::array fields{field::tail,  field::taper,    field::exit,
                            field::tucks, field::end_left, field::pick};
constexpr std::size_t first_of_plait = tucks;

constexpr Step fit_now{
    Action::fit_first, {}, "Put on the line what has to be there before it is closed."};

constexpr std::array steps_braid{
    fit_now,
    Step{Action::slip_knot,
         {},
         "On each side tie a slip knot five fids from the end. It keeps cover and core together in "
         "the standing part."},
    Step{Action::mark,
         {MarkName::taper_start, MarkName::reference, MarkName::extraction},
         "Tape both ends. Mark each cover at its taper start, at the reference mark, "
         "and at the extraction mark, {short_section} further.",
         Part::cover},
    Step{Action::draw_core,
         {MarkName::extraction},
         "Open each cover at its extraction mark without breaking a yarn and take the core out "
         "there, back to its end."},
    Step{Action::mark,
         {MarkName::extraction, MarkName::core_entry, MarkName::core_exit},
         "Stroke the covers smooth and mark each core where it comes out. Push the cover back and "
         "mark on the bare core the entry, {short_section} further on, and the exit.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the end of each cover from its taper-start mark on.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::core_entry, MarkName::core_exit},
         "Lead the cover of each side into the core of the other, in at the entry, along inside, "
         "and out at the exit.",
         Part::cover},
    Step{Action::bring_together,
         {MarkName::reference, MarkName::core_entry},
         "Draw on each until its reference mark lies at the other core's entry. These are the two "
         "crossings.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::reference, MarkName::extraction},
         "Send each core's tail into the other side's cover, in hard by the crossing and out at "
         "that cover's extraction mark.",
         Part::core},
    Step{Action::draw_up,
         {},
         "Draw on the four tails in turn until both crossings are tight and cover and core lie "
         "equally long between them."},
    Step{Action::bury,
         {MarkName::core_entry, MarkName::core_exit},
         "Hold one crossing and stroke the braid away from it, both ways, until the cover's end "
         "has gone into the core. Then do the same at the other.",
         Part::cover},
    Step{Action::cut,
         {MarkName::extraction},
         "Cut the cores' tails off flush where they come out of the covers.",
         Part::core},
    Step{Action::bury,
         {MarkName::reference, MarkName::extraction},
         "Stroke each cover over the end of the core inside it.",
         Part::core},
    Step{
        Action::smooth,
        {MarkName::core_exit, MarkName::extraction},
        "Work the cover down from one slip knot over its crossing, then from the other. An opening "
        "of up to a diameter may be left in the middle.",
        Part::cover},
    Step{Action::stitch,
         {MarkName::extraction},
         "Stitch through the join, along the rope and again a quarter turn round. Undo the slip "
         "knots."},
    Step{Action::load, {}, "Load the closed line, then measure round it again."}};

constexpr std::array steps_plait{
    fit_now,
    Step{Action::mark,
         {MarkName::unlay},
         "Mark both ends at their unlay marks. Before anything "
         "is opened, run a pen along the strands of one hand, from the end to at least six picks "
         "past the last tuck: without it the hands get mixed."},
    Step{Action::tape, {MarkName::unlay}, "Put a turn of tape on both ends at the unlay marks."},
    Step{
        Action::unlay,
        {MarkName::unlay},
        "Unlay the strands to the marks and tape them in their four pairs, each pair of one hand."},
    Step{Action::bring_together,
         {MarkName::unlay},
         "Marry the two ends. Each pair goes between the two strands of the other end's pair of "
         "the same hand, by turns this one through that and that one through this. Go on until the "
         "marks meet. Tie twine round the place and take the tapes off."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Tuck each pair under the nearest pair of the other hand, then the next pair under one of "
         "its other hand the other way round: {tucks} full tucks a side, drawn up evenly."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Of every pair leave out the strand that lies nearest the marriage, and go on with the "
         "other one alone for {tucks_single} tucks."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Halve the strands that are left and tuck them {tucks_half} times more, so that the "
         "splice runs out thin. Leave {end_left} of each."},
    Step{Action::load,
         {},
         "Take the twine off, load the closed line, then measure round it again."}};

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
    auto bury = need.part(read_bury(request, {tail, taper, exit, std::nullopt}, host_of(diameter)));
    // A crossing costs what it costs in an eye of the same rope, its margin included.
    bury.take_up = need.length(FigureId::shortening, diameter);
    bury.facts.take_up = bury.take_up.length;
    const auto section = need.length(FigureId::short_section, diameter);
    if (need.failed()) {
        return need.fault();
    }
    const Nanometres short_section = to_nanometres(section.length);
    const Nanometres tail_ends = short_section + to_nanometres(bury.facts.tail);
    if (to_nanometres(bury.facts.exit) < tail_ends) {
        return Unexpected(Fault{
            Code::field_out_of_range,
            "the fid would come out before the tail's end; the exit must be at least " +
                show_length(from_nanometres(tail_ends), UnitSystem::metric) + " from the join",
            {},
            "exit"});
    }

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
