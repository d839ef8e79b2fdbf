// stripped-eye: cover taken off over the eye, the core buried in itself, the cover's tail in the
// core.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration cover_end{
    "cover_end",
    "from the bearing point to where the cover ends on the finished line",
    Dimension::length,
    0.001,
    50.0,
    "beyond the bury, with room for the cover's tail",
    false,
    {},
    {},
    FieldRole::cover_end};
constexpr FieldDeclaration cover_tail{
    "cover_tail", "cover kept beyond the cover end and led into the core", Dimension::length, 0.0,
    5.0,          "the table's multiple of the nominal diameter"};

enum Field : std::size_t {
    eye,
    pin,
    tail,
    taper,
    exit,
    settled,
    core,
    pairs,
    strands,
    end_of_cover,
    tail_of_cover
};
constexpr std::array fields{field::eye,     field::pin,     field::tail, field::taper,
                            field::exit,    field::settled, field::core, field::pairs,
                            field::strands, cover_end,      cover_tail};

constexpr std::array steps{
    Step{Action::mark,
         {MarkName::cover_end},
         "Mark the cover end on the cover, measured from the rope's end.",
         Part::cover},
    Step{Action::slip_knot,
         {},
         "Tie a slip knot well beyond it, so that the cover can be drawn back and comes to lie "
         "again as it was."},
    Step{Action::draw_core,
         {MarkName::cover_end},
         "Draw the core out of the cover from the end to beyond the cover-end mark."},
    Step{Action::strip,
         {MarkName::cover_end},
         "Cut the cover off so that {cover_tail} of it is left beyond the mark, towards the eye.",
         Part::cover},
    Step{Action::mark,
         {MarkName::taper_start, MarkName::near_throat, MarkName::far_throat, MarkName::exit},
         "Put the marks on the bare core, measured from its end, with the marking tension on the "
         "core.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Lead the core's tail from the far throat along inside the core and out at the exit mark, "
         "{exit} from the throat.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw it through until near throat and far throat meet, and check the eye: {eye}.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the core's tail from the taper-start mark to its end, a strand of each hand "
         "together, at the drop-pair marks if the core's strands are known.",
         Part::core},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Smooth the core over it from the throat until it is swallowed.",
         Part::core},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Lock-stitch the core from {stitch_start} to {stitch_end} beyond the throat.",
         Part::core},
    Step{Action::taper,
         {MarkName::cover_end},
         "Thin the cover's tail over its last half.",
         Part::cover},
    Step{Action::bury,
         {MarkName::cover_end},
         "Lead it into the core at the cover-end mark, pointing towards the eye, and smooth the "
         "core over it.",
         Part::cover},
    Step{Action::whip,
         {MarkName::cover_end},
         "Whip over the place where the cover goes in, on cover and core alike."},
    Step{Action::load, {}, "Undo the slip knot. Load the eye and measure it."},
    Step{Action::smooth,
         {MarkName::cover_end},
         "Then smooth the cover towards the line's far end and trim there what comes out.",
         Part::cover}};

/// Where the cover ends, what of it is buried, and what the core shortens over that.
struct CoverPart {
    Length from_throat;  ///< along the core, as marked before the splice is made
    Length from_bearing; ///< on the finished line
    SourcedLength tail;
    SourcedLength take_up;
};

/// The cover's tail keeps its section over its first half and is thinned to nothing over the other.
Result<SourcedLength> take_up_over_cover(const Request& request, const CorePart& core,
                                         Length tail) {
    const double ratio = request.rope.diameter / core.diameter;
    return read_take_up(request, tapered_tail(tail, tail / 2.0, ratio * ratio - 1.0),
                        Fault{Code::field_out_of_range,
                              "the cover's tail is too thick to go into a core of " +
                                  show_fine(core.diameter, UnitSystem::metric) +
                                  "; give the core's measured diameter",
                              {},
                              "core"});
}

Result<CoverPart> read_cover(const Request& request, const CorePart& core, const EyePart& eye_part,
                             const BuryPart& bury) {
    CoverPart cover;
    Figures need(request);
    cover.tail = need.field_or(tail_of_cover, FigureId::cover_tail, request.rope.diameter);
    const Figure gap = need.figure(FigureId::cover_gap);
    if (need.failed()) {
        return need.fault();
    }
    cover.take_up = need.part(take_up_over_cover(request, core, cover.tail.length));
    if (need.failed()) {
        return need.fault();
    }
    const Length over_bury =
        from_nanometres(to_nanometres(bury.facts.tail) + to_nanometres(bury.facts.take_up));
    const Length shortest =
        over_bury + gap.length(core.diameter) + cover.tail.length + cover.take_up.length;
    // A distance on the finished line runs over both buries, where the core is shorter than it was
    // marked.
    const Length inside = eye_part.facts.inside;
    const Length lost = bury.facts.take_up + cover.take_up.length;
    cover.from_bearing = request.fields.length(end_of_cover).value_or(inside + shortest - lost);
    cover.from_throat = cover.from_bearing - inside + lost;
    if (to_nanometres(cover.from_throat) < to_nanometres(shortest)) {
        return Unexpected(Fault{Code::strip_does_not_fit,
                                "the cover would end over the bury; cover_end must be at least " +
                                    show_length(shortest + inside - lost, UnitSystem::metric) +
                                    " from the bearing point",
                                {},
                                "cover_end"});
    }
    return cover;
}

void add_cover(End& end, const CoverPart& cover, const CorePart& core) {
    const Nanometres cover_ends = end.standing_mark + to_nanometres(cover.from_throat);
    end.add(Mark{MarkName::cover_end, cover_ends});
    end.add(Span{Span::Form::core, end.standing_mark, cover_ends, to_nanometres(core.diameter)});
    end.add(row_of(Item::cover_take_up, cover.take_up, Group::take_up));
    end.cover = CoverFacts{{}, cover.tail.length, cover.from_bearing};
    end.bury_reach = to_nanometres(cover.from_throat);
    end.milks_cover = true;
}

Result<End> work_out(const Request& request) {
    const auto core_part = read_core(request, core);
    if (!core_part) {
        return Unexpected(core_part.error());
    }
    Figures need(request);
    auto eye_part = need.part(read_eye(request, {eye, pin}, core_part->diameter));
    const auto bury = need.part(read_bury(request, {tail, taper, exit, settled, pairs, strands},
                                          host_of(core_part->diameter)));
    if (need.failed()) {
        return need.fault();
    }
    const auto cover = read_cover(request, *core_part, eye_part, bury);
    if (!cover) {
        return Unexpected(cover.error());
    }
    if (core_part->assumed) {
        doubt_diameter(eye_part, core_part->sd);
    }
    End end = eye_with_bury(request, eye_part, bury);
    add_cover(end, *cover, *core_part);
    add_core_caution(end, *core_part);
    end.steps = steps;
    return end;
}

} // namespace

Kind stripped_eye() {
    return {{"stripped-eye", "cover off over the eye, the core spliced, the cover's tail buried",
             "inside of the bare core's crown",
             Constructions(Construction::double_braid, Construction::core_dependent), fields,
             Reach::one_end, true},
            work_out};
}

} // namespace libsplice
