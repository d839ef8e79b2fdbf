// sewn-join: two ends of an endless control line laid together, or butted, and stitched.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"
#include "libsplice/mechanics/rope/braid.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> ways{"overlap", "butt"};
constexpr FieldDeclaration way_field{
    "way",
    "how the ends lie: side by side, or end to end with a tail led inside each way",
    Dimension::choice,
    0.0,
    0.0,
    "overlap",
    false,
    ways};
constexpr FieldDeclaration overlap_field{
    "overlap",
    "length over which the two ends lie together, for the way overlap",
    Dimension::length,
    0.005,
    5.0,
    "the rule's overlap"};

enum Field : std::size_t { way, overlap, tail, taper, exit, settled, pairs, strands, core };
constexpr std::array fields{way_field,    overlap_field,  field::tail,
                            field::taper, field::exit,    field::settled,
                            field::pairs, field::strands, field::core};

constexpr std::array steps_overlap{
    Step{Action::fit_first,
         {},
         "Put on the line every block, ring and cleat part that cannot be opened."},
    Step{Action::mark,
         {MarkName::join, MarkName::overlap_end},
         "Mark both ends at the join mark and at the overlap-end mark."},
    Step{Action::taper,
         {MarkName::join},
         "Thin each end to a slant over its last few diameters, so that the join runs out evenly."},
    Step{Action::bring_together,
         {MarkName::join},
         "Lay the ends side by side until the join marks meet and each tip lies on the other's "
         "overlap-end mark. See that the line has no turn in it."},
    Step{Action::stitch,
         {MarkName::join, MarkName::overlap_end},
         "Sew the two parts together over the whole overlap, in rows along and back."},
    Step{Action::whip, {MarkName::overlap_end}, "Whip over both tips."},
    Step{Action::load,
         {},
         "Load the closed line, measure round it, and pull the join through every block by hand."}};

constexpr std::array steps_butt{
    Step{Action::fit_first,
         {},
         "Put on the line every block, ring and cleat part that cannot be opened."},
    Step{Action::mark, {}, "Put the marks on both ends at the pull to mark at."},
    Step{Action::strip,
         {MarkName::join},
         "Of a covered rope take the cover off from the join mark to the end.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::join, MarkName::exit},
         "Lead each tail into the other end at its join mark and out at its exit mark: into the "
         "core of a covered rope, not between core and cover."},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin each tail from the taper-start mark to its end, one strand of each hand at a time; "
         "the drop-pair marks, where there are any, show the places."},
    Step{Action::bring_together,
         {MarkName::join},
         "Draw them through until the join marks meet. See that the line has no turn in it."},
    Step{Action::bury,
         {MarkName::join, MarkName::bury_end},
         "Smooth both sides outwards from the join until the tails are swallowed."},
    Step{Action::stitch,
         {MarkName::join},
         "Sew across the butt all round with waxed thread, then through both sides over the length "
         "of the tails, at least ten passes a side."},
    Step{Action::load,
         {},
         "Load the closed line, measure round it, and pull the join through every block by hand."}};

/// Half of the overlap belongs to each side.
Result<End> overlapped_side(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto whole = need.field_or(overlap, FigureId::overlap, diameter);
    if (need.failed()) {
        return need.fault();
    }
    SourcedLength half = times(0.5, whole);
    half.working = {FormulaId::half_of, {whole.length.si()}};
    End side;
    side.add(row_of(Item::overlap, half));
    const Nanometres tail_end = add_cutting_loss(side, request, usual_cut(request.rope));
    side.standing_mark = tail_end + to_nanometres(half.length);
    const Nanometres end = tail_end + to_nanometres(whole.length);
    side.add(Mark{MarkName::join, side.standing_mark});
    side.add(Mark{MarkName::overlap_end, end});
    side.bury_reach = end - side.standing_mark;
    side.add(Value{ValueName::overlap_m, whole.length.si()});
    side.add(Span{Span::Form::stitched, tail_end, end, to_nanometres(diameter)});
    side.steps = steps_overlap;
    return side;
}

/// In covered rope the cover is off the tail, and lies over a core with a core inside.
Result<Host> host_of_butt(const Request& request) {
    Host host = host_of(request.rope.counting_diameter());
    if (!has_cover(request.rope.construction)) {
        if (auto fault = find_foreign_field(request, fields, {core, fields.size()},
                                            "a butt in rope without a cover")) {
            return Unexpected(*std::move(fault));
        }
        return host;
    }
    const auto inside = read_core(request, core);
    if (!inside) {
        return Unexpected(inside.error());
    }
    const double ratio = inside->diameter / host.counted;
    host.over = diameter_over_bury(host.counted, ratio * ratio);
    return host;
}

Result<End> butted_side(const Request& request) {
    const auto host = host_of_butt(request);
    if (!host) {
        return Unexpected(host.error());
    }
    const auto bury = read_bury(request, {tail, taper, exit, settled, pairs, strands}, *host);
    if (!bury) {
        return Unexpected(bury.error());
    }
    End side = buried_side(request, *bury, MarkName::join);
    add_core_alone(side, request);
    side.steps = steps_butt;
    return side;
}

Result<End> work_out(const Request& request) {
    const bool butt = request.fields.has(way) && request.fields.at(way) > 0.5;
    // An overlap has nothing inside, a butt does not lie side by side.
    if (auto fault =
            butt ? find_foreign_field(request, fields, {overlap, tail}, "a sewn join made as butt")
                 : find_foreign_field(request, fields, {tail, fields.size()},
                                      "a sewn join made as overlap")) {
        return Unexpected(*std::move(fault));
    }
    const auto practice = request.rules.need(FigureId::overlap);
    if (!practice) {
        return Unexpected(practice.error());
    }
    auto side = butt ? butted_side(request) : overlapped_side(request);
    if (!side) {
        return side;
    }
    side->add(Caution{"the stitching carries the load: this join is for control lines",
                      practice->source, Caution::Weight::refused_for_person});
    count_both_sides(*side);
    return side;
}

} // namespace

Kind sewn_join() {
    return {{"sewn-join", "two ends stitched together, for endless control lines",
             "round the closed line, in use; the ends meet at the join marks",
             Constructions(Construction::twelve_strand, Construction::double_braid,
                           Construction::core_dependent, Construction::parallel_core,
                           Construction::solid_braid),
             fields, Reach::both_ends},
            work_out};
}

} // namespace libsplice
