// stripped-eye: cover taken off over the eye, the core buried in itself, the cover's tail in the
// core.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/covered_part.h"
#include "libsplice/units/show.h"

#include <algorithm>

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
         {MarkName::cover_tail_end, MarkName::cover_taper, MarkName::cover_end},
         "Tape the end. Mark the cover where it will end on the finished line. On its own tail, "
         "towards the eye, mark the taper start and where that tail is cut, {cover_tail} on.",
         Part::cover},
    Step{Action::slip_knot,
         {},
         "Tie a slip knot about two metres beyond, on the side that keeps its cover."},
    Step{Action::draw_core,
         {MarkName::cover_end},
         "Open the cover at the cover end without breaking a yarn and take the core out there, "
         "back to its end. Stroke the cover smooth from the slip knot to the hole."},
    Step{Action::mark,
         {},
         "Mark the core where it comes out: that is its cover-end mark. From its end put all the "
         "other marks on it, with the marking tension on the core.",
         Part::core},
    Step{Action::cut,
         {MarkName::cover_tail_end},
         "Cut the cover off at its tail's end.",
         Part::cover},
    Step{Action::lead_in,
         {MarkName::cover_end, MarkName::cover_exit},
         "Lead the cover's tail into the core at the cover end, along inside towards the eye, and "
         "out at its exit mark. This comes before the eye: later the fid would come out inside the "
         "other bury.",
         Part::cover},
    Step{
        Action::taper,
        {MarkName::cover_taper},
        "Unbraid the cover's tail to its taper start and cut its strands off at different lengths.",
        Part::cover},
    Step{Action::bury,
         {MarkName::cover_end, MarkName::cover_tail_end},
         "Stroke the core from the cover end towards the exit until the cover's tail has gone in.",
         Part::cover},
    Step{Action::stitch,
         {MarkName::cover_end},
         "Cross-stitch through cover and core on both sides of the place where the cover goes in: "
         "these stitches hold the cover to the core."},
    Step{Action::whip, {MarkName::cover_end}, "Whip over that place."},
    Step{Action::fit_first,
         {},
         "Put on now what this eye is to hold: nothing closed can be added once the core goes on."},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Lead the core's tail in at the far throat, along inside the core, and out at the exit "
         "mark, {exit} from the throat.",
         Part::core},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw it through until the throats meet: the eye is {eye} from crown to throat.",
         Part::core},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the core's tail from the taper-start mark to its end, a strand of each hand "
         "together. If there are drop-pair marks, do it there.",
         Part::core},
    Step{Action::bury,
         {MarkName::far_throat, MarkName::bury_end},
         "Hold the throat and stroke the core over the tail until its end has gone in.",
         Part::core},
    Step{Action::stitch,
         {MarkName::far_throat},
         "Lock-stitch the core from {stitch_start} to {stitch_end} beyond the throat.",
         Part::core},
    Step{Action::load, {}, "Undo the slip knot. Load the eye, then measure it again."},
    Step{Action::smooth,
         {MarkName::cover_end},
         "Stroke the slack cover along to the line's other end.",
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
    const auto constants = read_braid_constants(request);
    if (!constants) {
        return Unexpected(constants.error());
    }
    return take_up_of(tapered_tail(tail, tail / 2.0, ratio * ratio - 1.0), constants->settled,
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

/// The core's fid must come out before it meets the cover's tail, which is inside by then.
void come_out_before_cover(BuryPart& bury, const CoverPart& cover) {
    bury.facts.exit =
        std::min(bury.facts.exit, cover.from_throat - cover.tail.length - cover.take_up.length);
}

void add_cover(End& end, const CoverPart& cover, const CorePart& core) {
    const Nanometres cover_ends = end.standing_mark + to_nanometres(cover.from_throat);
    end.add(Mark{MarkName::cover_end, cover_ends});
    if (const Nanometres tail_kept = to_nanometres(cover.tail.length); tail_kept != 0) {
        // The fid comes out a third further than the tail is long.
        end.add(Mark{MarkName::cover_exit, cover_ends - tail_kept - tail_kept / 3});
        end.add(Mark{MarkName::cover_taper, cover_ends - tail_kept / 2});
        end.add(Mark{MarkName::cover_tail_end, cover_ends - tail_kept});
    }
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
    auto bury = need.part(read_bury(request, {tail, taper, exit, settled, pairs, strands},
                                    host_of(core_part->diameter)));
    if (need.failed()) {
        return need.fault();
    }
    const auto cover = read_cover(request, *core_part, eye_part, bury);
    if (!cover) {
        return Unexpected(cover.error());
    }
    come_out_before_cover(bury, *cover);
    if (core_part->assumed) {
        doubt_diameter(eye_part, core_part->sd);
    }
    End end = eye_with_bury(request, eye_part, bury);
    add_cover(end, *cover, *core_part);
    add_core_caution(end, *core_part);
    add_core_alone(end, request);
    end.steps = steps;
    return end;
}

} // namespace

Kind stripped_eye() {
    return {
        {.name = "stripped-eye",
         .title = "cover off over the eye, the core spliced, the cover's tail buried",
         .datum = "inside of the bare core's crown",
         .constructions = Constructions(Construction::double_braid, Construction::core_dependent),
         .fields = fields,
         .counts_in_core = true,
         .families = {"buried-eyes", "buries"}},
        work_out};
}

} // namespace libsplice
