// cover-over-join: a thin line led into the hollow end of a thicker tail.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/bury_part.h"
#include "libsplice/mechanics/rope/braid.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> sides{"thin", "thick"};
constexpr FieldDeclaration side_field{
    "side", "which of the two pieces this is", Dimension::choice, 0.0, 0.0, "none: say which", true,
    sides};
constexpr FieldDeclaration thin_field{"thin",
                                      "diameter of the thin line; the thick piece needs it",
                                      Dimension::length,
                                      0.0005,
                                      0.2,
                                      "on the thin piece, its own diameter"};
constexpr FieldDeclaration sheave_field{
    "sheave",
    "diameter of the sheave that the join passes, at the groove",
    Dimension::length,
    0.001,
    2.0,
    "not known"};

enum Field : std::size_t { side, thin, tail, taper, sheave };
constexpr std::array fields{side_field, thin_field, field::tail, field::taper, sheave_field};

constexpr std::array steps_thin{
    Step{Action::mark, {}, "Put the marks on at the pull to mark at."},
    Step{Action::taper,
         {MarkName::taper_start},
         "Thin the end from the taper-start mark to the nose end, {@nose end} from the cut. Stitch "
         "what is left to a hard, even nose."},
    Step{Action::lead_in,
         {MarkName::cover_end, MarkName::nose_end},
         "Lead the nose into the open end of the thick tail and along inside it until the "
         "cover-end mark meets the end of the thick cover: {tail} lies inside."},
    Step{Action::bury,
         {MarkName::cover_end, MarkName::nose_end},
         "Stroke the thick cover over the line until it lies without slack."},
    Step{Action::stitch,
         {MarkName::first_stitch},
         "Stitch through both at the first-stitch mark, in the middle and near the nose. At the "
         "cover's mouth nothing grips but these stitches: they carry the load."},
    Step{Action::whip,
         {MarkName::cover_end},
         "Thin the thick cover's end down on to this line, stitch it and whip over the step."},
    Step{Action::load,
         {},
         "Pull it through its sheave by hand, both ways. Then load it and measure this piece to "
         "the cover end."}};
constexpr std::array steps_thick{
    Step{Action::mark, {}, "Put the marks on at the pull to mark at."},
    Step{Action::cut,
         {MarkName::nose_end},
         "Open the end of this tail. Draw the core out of a covered rope and cut it off so that it "
         "ends at the nose-end mark. Thin its last diameters, or the "
         "rope hinges there; a hollow braid is only opened.",
         Part::core},
    Step{Action::lead_in,
         {MarkName::cover_end, MarkName::nose_end},
         "Draw the nose of the thin line in at the open end, {tail} of it, until its cover-end "
         "mark meets the end of this cover."},
    Step{Action::bury,
         {MarkName::cover_end, MarkName::nose_end},
         "Stroke the cover over the line until it lies without slack."},
    Step{Action::taper,
         {MarkName::cover_end},
         "Take strands out of the last few diameters of the cover one by one, so that it ends "
         "thin. Lay the ends down with stitches.",
         Part::cover},
    Step{Action::stitch,
         {MarkName::first_stitch},
         "Stitch through both from the first-stitch mark on in three places, then whip."},
    Step{Action::load,
         {},
         "Pull the join through its sheave by hand, both ways. Then load it and measure this piece "
         "from the cover end."}};

constexpr std::string_view cover_carries =
    "from the nose on the load is in the cover alone: of a core-dependent rope that is a small "
    "share of its strength";
constexpr std::string_view must_run =
    "the join has to pass its sheave both ways, pulled by hand, before the line is loaded";

/// What both pieces share: the nose, in diameters of the thin line.
struct Nose {
    Length thin;
    SourcedLength length;
    Length taper;
    Length first_stitch; ///< from the cover end
    CitationId practice{};
};

std::optional<Fault> ends_before_stitch(const Nose& nose) {
    if (to_nanometres(nose.length.length) > to_nanometres(nose.first_stitch)) {
        return std::nullopt;
    }
    return Fault{Code::field_out_of_range,
                 "a nose of " + show_length(nose.length.length, UnitSystem::metric) +
                     " ends before its first stitch, " +
                     show_length(nose.first_stitch, UnitSystem::metric) +
                     " from the cover's end; it must be longer than that",
                 {},
                 "tail"};
}

std::optional<Fault> longer_than_nose(const Nose& nose) {
    if (nose.taper <= nose.length.length) {
        return std::nullopt;
    }
    return Fault{Code::taper_longer_than_tail,
                 "a taper of " + show_length(nose.taper, UnitSystem::metric) +
                     " is longer than the nose of " +
                     show_length(nose.length.length, UnitSystem::metric),
                 {},
                 "taper"};
}

Result<Nose> read_nose(const Request& request, Length diameter) {
    Figures need(request);
    Nose nose;
    nose.thin = diameter;
    nose.length = need.field_or(tail, FigureId::tail, diameter);
    const Figure printed_taper = need.figure(FigureId::taper);
    const Figure printed_tail = need.figure(FigureId::tail);
    nose.first_stitch = need.figure(FigureId::stitch_start).length(diameter);
    nose.practice = printed_tail.source;
    need.check(
        check_minimum(request, FigureId::minimum_tail, "tail", nose.length.length, diameter));
    need.check(ends_before_stitch(nose));
    if (need.failed()) {
        return need.fault();
    }
    const double share = printed_taper.length(diameter) / printed_tail.length(diameter);
    nose.taper = request.fields.length(taper).value_or(nose.length.length * share);
    need.check(longer_than_nose(nose));
    if (need.failed()) {
        return need.fault();
    }
    return nose;
}

/// What both pieces know of the nose.
BuryFacts facts_of(const Nose& nose) {
    BuryFacts bury;
    bury.tail = nose.length.length;
    bury.taper = nose.taper;
    return bury;
}

End thin_piece(const Request& request, const Nose& nose) {
    End piece;
    piece.add(row_of(Item::tail, nose.length));
    const Nanometres nose_end = add_cutting_loss(piece, request, Cut::shears);
    piece.standing_mark = nose_end + to_nanometres(nose.length.length);
    const Nanometres taper_start = nose_end + to_nanometres(nose.taper);
    const Nanometres first_stitch = piece.standing_mark - to_nanometres(nose.first_stitch);
    piece.add(Mark{MarkName::nose_end, nose_end});
    if (taper_start < first_stitch) {
        piece.add(Mark{MarkName::taper_start, taper_start});
    }
    piece.add(Mark{MarkName::first_stitch, first_stitch});
    piece.add(Mark{MarkName::cover_end, piece.standing_mark});
    const Nanometres width = to_nanometres(nose.thin);
    if (nose.taper > Length()) {
        piece.add(Span{Span::Form::tapered, nose_end, taper_start, width});
    }
    if (taper_start < piece.standing_mark) {
        piece.add(Span{Span::Form::buried, taper_start, piece.standing_mark, width});
    }
    piece.bury = facts_of(nose);
    piece.steps = steps_thin;
    return piece;
}

/// The nose's section as a share of the braid's that it goes into.
double section_in(const Request& request, const Nose& nose) {
    const double ratio = nose.thin / request.rope.counting_diameter();
    return ratio * ratio;
}

/// A hollow braid swells over the nose and shortens. A cover whose core the line replaces may do
/// either; no source says how much, so only the spread is known.
Result<SourcedLength> take_up_of_thick(const Request& request, const BuryFacts& bury) {
    if (request.rope.construction == Construction::twelve_strand) {
        const auto constants = read_braid_constants(request);
        if (!constants) {
            return Unexpected(constants.error());
        }
        return take_up_of(bury.inside, constants->settled,
                          {Code::table_value_wrong,
                           "the nose does not go into a braid with this braid constant"});
    }
    const auto spread = request.rules.need(FigureId::take_up_spread);
    if (!spread) {
        return Unexpected(spread.error());
    }
    return SourcedLength{{},
                         spread->length(request.rope.counting_diameter()),
                         SpreadOrigin::stated_guess,
                         spread->source,
                         {FormulaId::not_known_take_up, {}}};
}

Result<End> thick_piece(const Request& request, const Nose& nose) {
    const bool hollow = request.rope.construction == Construction::twelve_strand;
    BuryFacts bury = facts_of(nose);
    if (hollow) {
        const double section = section_in(request, nose);
        bury.inside = tapered_tail(bury.tail, bury.taper, section);
        bury.over = diameter_over_bury(request.rope.counting_diameter(), section);
    }
    const auto take_up = take_up_of_thick(request, bury);
    if (!take_up) {
        return Unexpected(take_up.error());
    }
    bury.take_up = take_up->length;
    End piece;
    piece.add(row_of(Item::take_up, *take_up, Group::take_up));
    piece.standing_mark = add_cutting_loss(piece, request, usual_cut(request.rope));
    piece.bury_reach = to_nanometres(nose.length.length) + to_nanometres(take_up->length);
    const Nanometres nose_end = piece.standing_mark + piece.bury_reach;
    piece.add(Mark{MarkName::cover_end, piece.standing_mark});
    piece.add(Mark{MarkName::first_stitch, piece.standing_mark + to_nanometres(nose.first_stitch)});
    piece.add(Mark{MarkName::nose_end, nose_end});
    piece.add(Span{Span::Form::covered, piece.standing_mark, nose_end,
                   to_nanometres(request.rope.diameter)});
    piece.bury = bury;
    piece.steps = steps_thick;
    return piece;
}

/// The thin line's diameter, as this piece has it or is told it.
Result<Length> diameter_of_thin(const Request& request, bool is_thick) {
    const auto given = request.fields.length(thin);
    if (!is_thick) {
        return given.value_or(request.rope.counting_diameter());
    }
    if (!given) {
        return Unexpected(Fault{Code::field_missing,
                                "the thick piece of a cover-over-join needs the field \"thin\", "
                                "the diameter of the thin line",
                                {},
                                "thin"});
    }
    if (*given >= request.rope.counting_diameter()) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "a line of " + show_fine(*given, UnitSystem::metric) +
                                    " does not go into rope of " +
                                    show_fine(request.rope.diameter, UnitSystem::metric),
                                {},
                                "thin"});
    }
    return *given;
}

void add_sheave_cautions(End& piece, const Request& request, const Nose& nose) {
    piece.add(Caution{must_run, nose.practice});
    const auto advised = request.rules.find(FigureId::advised_sheave);
    const auto given = request.fields.length(sheave);
    if (advised != nullptr && given && *given < advised->length(request.rope.counting_diameter())) {
        piece.add(Caution{"the sheave is smaller than is advised for this rope", advised->source});
    }
}

Result<End> work_out(const Request& request) {
    const bool is_thick = request.fields.at(side) > 0.5;
    const auto diameter = diameter_of_thin(request, is_thick);
    if (!diameter) {
        return Unexpected(diameter.error());
    }
    const auto nose = read_nose(request, *diameter);
    if (!nose) {
        return Unexpected(nose.error());
    }
    auto piece = is_thick ? thick_piece(request, *nose) : thin_piece(request, *nose);
    if (!piece) {
        return piece;
    }
    piece->stitching = StitchFacts{nose->first_stitch, std::nullopt};
    add_sheave_cautions(*piece, request, *nose);
    if (is_thick && request.rope.construction != Construction::twelve_strand) {
        piece->add(Caution{cover_carries, nose->practice, Caution::Weight::refused_for_person});
    }
    return piece;
}

} // namespace

Kind cover_over_join() {
    return {{"cover-over-join", "a thin line led into the hollow end of a thicker tail",
             "end of the thick cover, which is the mark where the two pieces meet",
             Constructions(Construction::twelve_strand, Construction::double_braid,
                           Construction::core_dependent, Construction::parallel_core),
             fields},
            work_out};
}

} // namespace libsplice
