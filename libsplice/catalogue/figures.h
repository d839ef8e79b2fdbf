// The one table of figures: what each is called, what it says, and the units it can be printed in.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// What a figure says; the meaning of each is in its row of `figure_table`.
enum class FigureId : std::uint8_t {
    tail,
    minimum_tail,
    advised_tail,
    person_tail,
    taper,
    exit,
    fid,
    fid_metric,
    stitch_start,
    stitch_length,
    crossing,
    braid_constant,
    spliced_constant,
    take_up_spread,
    take_up_angle,
    braid_angle,
    packing,
    self_friction,
    throat_share,
    strands,
    blunt_loss,
    tucks,
    minimum_tucks,
    per_tuck,
    picks_per_tuck,
    pick,
    end_left,
    minimum_end_left,
    knot,
    set,
    knot_width,
    body,
    beyond_loop,
    turns,
    standing_side,
    bight,
    beyond_turns,
    half_hitches,
    per_half_hitch,
    friction,
    eye_pins,
    eye_diameters,
    advised_eye_pins,
    throat_limit,
    clips,
    turn_back,
    usual_turn_back,
    proof,
    torque,
    core_out,
    core_alone,
    clip_spacing,
    retained,
    core_share,
    cover_tail,
    cover_gap,
    heat_cut,
    shear_cut,
    whipping,
    whipping_offset,
    first_stretch,
    slack,
    milk_out,
    minimum_milk_out,
    stretch,
    stretch_spread,
    tape_fixed,
    tape_share,
    design_factor,
    minimum_strength,
    cover_at_cleat,
    sleeve_loss,
    shrinkage,
    overlap,
    seizing,
    basting_size,
    basting_limit,
    retained_basted,
    shortening,
    short_section,
    slip_knot,
    turn_draw,
    bar_diameters,
    ring_clearance,
    noose,
    least_size,
    tucks_single,
    tucks_half,
    crowns,
    crown,
    strand_crowns,
    core_back,
    advised_sheave,
    bend_1,
    bend_2,
    bend_4,
    bend_6,
    bend_10,
    bend_15,
    bend_30,
    bend_40,
    elastic_from,
    elastic_up_to,
    elastic_limit,
    elastic_loss,
    pair_tolerance,
    slip,
    working_share,
    wind_pressure,
    boom_pressure,
    sheave_loss,
    crew_outside,
};

/// The unit a figure is printed in.
enum class FigureUnit : std::uint8_t {
    none,
    percent,
    diameters,
    picks,
    mm,
    cm,
    m,
    in,
    ft,
    degrees,
    newtons,
    lbf
};
[[nodiscard]] std::optional<FigureUnit> read_figure_unit(std::string_view name);
[[nodiscard]] std::string_view name_of(FigureUnit unit);

/// What a figure counts in. A length that is used as a share would be nonsense.
enum class FigureSort : std::uint8_t {
    length,    ///< a length, or rope diameters
    reach,     ///< the same, or picks of the braid
    share,     ///< of a length, a strength or a pull: percent, or a number up to 1
    count,     ///< a number without a unit
    diameters, ///< rope diameters only
    picks,     ///< picks of the braid only
    angle,     ///< degrees
    force,     ///< newtons or pounds-force
};
/// The units that figures of a sort can be printed in.
[[nodiscard]] std::span<const FigureUnit> units_of(FigureSort sort);

/// All that is known of one figure.
struct FigureDeclaration {
    FigureId id;
    std::string_view word;    ///< as in the tables
    std::string_view meaning; ///< in one line
    FigureSort sort;
    double highest_share = 1.0; ///< of a share: the most that it may be
};

inline constexpr auto figure_table = std::to_array<FigureDeclaration>({
    {FigureId::tail, "tail", "whole end beyond the throat, or what is left past a knot",
     FigureSort::length},
    {FigureId::minimum_tail, "minimum_tail", "refused below this", FigureSort::length},
    {FigureId::advised_tail, "advised_tail", "a caution below this", FigureSort::length},
    {FigureId::person_tail, "person_tail", "refused below this on a line that carries a person",
     FigureSort::length},
    {FigureId::taper, "taper", "part of the tail that is thinned out", FigureSort::length},
    {FigureId::exit, "exit",
     "how far the fid reaches along the host, from the throat; no rope lost", FigureSort::reach},
    {FigureId::fid, "fid", "one full fid length, on rope sized in inches", FigureSort::length},
    {FigureId::fid_metric, "fid_metric", "the same, on rope sized in millimetres",
     FigureSort::length},
    {FigureId::stitch_start, "stitch_start", "lock stitching: from the throat to its first stitch",
     FigureSort::length},
    {FigureId::stitch_length, "stitch_length", "lock stitching: its length", FigureSort::length},
    {FigureId::crossing, "crossing", "how much a locked crossing closes up at first load",
     FigureSort::length},
    {FigureId::braid_constant, "braid_constant", "K of the braid over a bury, once it was loaded",
     FigureSort::count},
    {FigureId::spliced_constant, "spliced_constant",
     "K of the braid over a bury as it is spliced, before its first load", FigureSort::count},
    {FigureId::take_up_spread, "take_up_spread", "standard deviation of one end's take-up",
     FigureSort::length},
    {FigureId::take_up_angle, "take_up_angle",
     "of strand to axis in an empty hollow braid, from which K is computed", FigureSort::angle},
    {FigureId::braid_angle, "braid_angle", "of strand to axis in an empty hollow braid",
     FigureSort::angle},
    {FigureId::packing, "packing", "of a buried tail: 1 as the rope itself", FigureSort::count},
    {FigureId::self_friction, "self_friction",
     "coefficient of friction of a fibre on itself, inside a bury", FigureSort::count},
    {FigureId::throat_share, "throat_share",
     "share of the load that the tail carries at the throat", FigureSort::share},
    {FigureId::strands, "strands", "strands of a hollow braid", FigureSort::count},
    {FigureId::blunt_loss, "blunt_loss", "strength lost where a tail ends with its whole section",
     FigureSort::share},
    {FigureId::tucks, "tucks", "full tucks", FigureSort::count},
    {FigureId::minimum_tucks, "minimum_tucks", "refused below this", FigureSort::count},
    {FigureId::per_tuck, "per_tuck", "strand length unlaid for one tuck", FigureSort::length},
    {FigureId::picks_per_tuck, "picks_per_tuck", "picks of a plait for one tuck",
     FigureSort::picks},
    {FigureId::pick, "pick", "length of one pick along the rope", FigureSort::length},
    {FigureId::end_left, "end_left", "what is left past the last tuck or a fitting",
     FigureSort::length},
    {FigureId::minimum_end_left, "minimum_end_left", "refused below this", FigureSort::length},
    {FigureId::knot, "knot", "rope a tight knot uses up: its length less the distance of its ends",
     FigureSort::length},
    {FigureId::set, "set", "what a hand-set knot uses as a multiple of a tight one",
     FigureSort::count},
    {FigureId::knot_width, "knot_width", "least width of a tight knot across the line",
     FigureSort::length},
    {FigureId::body, "body", "length of the knot along the rope", FigureSort::length},
    {FigureId::beyond_loop, "beyond_loop",
     "rope beyond the two legs of a knotted loop, less its tail", FigureSort::length},
    {FigureId::turns, "turns", "full turns of a hitch or lashing", FigureSort::count},
    {FigureId::standing_side, "standing_side",
     "part of beyond_loop that lies on the standing side of the loop", FigureSort::length},
    {FigureId::bight, "bight", "second leg of a bight in a bend, from its crown to where it leaves",
     FigureSort::length},
    {FigureId::beyond_turns, "beyond_turns", "rope in a hitch besides its turns, less its tail",
     FigureSort::length},
    {FigureId::half_hitches, "half_hitches", "half hitches that finish a lashing",
     FigureSort::count},
    {FigureId::per_half_hitch, "per_half_hitch",
     "rope in one of them, its share of the tail included", FigureSort::length},
    {FigureId::friction, "friction", "coefficient of friction of the rope on what it lies round",
     FigureSort::count},
    {FigureId::eye_pins, "eye_pins", "inside length of an eye in pin diameters", FigureSort::count},
    {FigureId::eye_diameters, "eye_diameters",
     "inside length of an eye in rope diameters, at least", FigureSort::diameters},
    {FigureId::advised_eye_pins, "advised_eye_pins", "a caution below this many pin diameters",
     FigureSort::count},
    {FigureId::throat_limit, "throat_limit", "largest included angle at the throat",
     FigureSort::angle},
    {FigureId::clips, "clips", "number of wire-rope clips", FigureSort::count},
    {FigureId::turn_back, "turn_back", "wire turned back from the throat", FigureSort::length},
    {FigureId::usual_turn_back, "usual_turn_back", "of a pressed sleeve: a caution below this",
     FigureSort::length},
    {FigureId::proof, "proof", "share of the strength that a pressed sleeve is loaded to",
     FigureSort::share},
    {FigureId::torque, "torque", "on the nuts of a wire-rope clip, in pound-feet",
     FigureSort::count},
    {FigureId::core_out, "core_out",
     "from the throat to where a core led round the eye leaves the cover", FigureSort::length},
    {FigureId::core_alone, "core_alone",
     "strength kept where the core alone of a double braid is joined", FigureSort::share},
    {FigureId::clip_spacing, "clip_spacing", "from clip to clip", FigureSort::length},
    {FigureId::retained, "retained", "strength that the end retains", FigureSort::share},
    {FigureId::core_share, "core_share", "core diameter as a share of the nominal diameter",
     FigureSort::share},
    {FigureId::cover_tail, "cover_tail", "cover kept beyond the cover end, led into the core",
     FigureSort::length},
    {FigureId::cover_gap, "cover_gap", "bare core between the bury and the cover's tail",
     FigureSort::length},
    {FigureId::heat_cut, "heat_cut", "rope lost in a heat cut", FigureSort::length},
    {FigureId::shear_cut, "shear_cut", "rope lost in a cut with shears through tape",
     FigureSort::length},
    {FigureId::whipping, "whipping", "length of a whipping", FigureSort::length},
    {FigureId::whipping_offset, "whipping_offset", "from the cut end to the whipping",
     FigureSort::length},
    {FigureId::first_stretch, "first_stretch", "permanent elongation of new rope at first loads",
     FigureSort::share},
    {FigureId::slack, "slack", "rope measured slack against rope at the reference tension",
     FigureSort::share},
    {FigureId::milk_out, "milk_out", "cover pushed out at the free end, as a share of the length",
     FigureSort::share},
    {FigureId::minimum_milk_out, "minimum_milk_out", "the least of it", FigureSort::length},
    {FigureId::stretch, "stretch", "elongation at a load; a table gives it as a RopeStretch",
     FigureSort::share, 10.0},
    {FigureId::stretch_spread, "stretch_spread",
     "spread of a stretch that is printed without one, as a share of it", FigureSort::share},
    {FigureId::tape_fixed, "tape_fixed", "error limit of a tape measure: fixed part",
     FigureSort::length},
    {FigureId::tape_share, "tape_share",
     "error limit of a tape measure: part in proportion to length", FigureSort::share},
    {FigureId::design_factor, "design_factor", "breaking strength over load that a rule asks for",
     FigureSort::count},
    {FigureId::minimum_strength, "minimum_strength", "breaking strength that a rule asks for",
     FigureSort::force},
    {FigureId::cover_at_cleat, "cover_at_cleat", "cover that has to lie beyond the cleat, hoisted",
     FigureSort::length},
    {FigureId::sleeve_loss, "sleeve_loss",
     "how much shorter a sleeve gets as it is opened over a line", FigureSort::share},
    {FigureId::shrinkage, "shrinkage", "how much shorter rope gets when it is washed or soaked",
     FigureSort::share},
    {FigureId::overlap, "overlap", "length over which two parts lie side by side and are stitched",
     FigureSort::length},
    {FigureId::seizing, "seizing", "length of a seizing", FigureSort::length},
    {FigureId::basting_size, "basting_size",
     "thickest rope whose parts are basted: stitched through and not round", FigureSort::length},
    {FigureId::basting_limit, "basting_limit", "longest basting that does not run open",
     FigureSort::length},
    {FigureId::retained_basted, "retained_basted",
     "strength that an end retains whose parts are basted", FigureSort::share},
    {FigureId::shortening, "shortening",
     "standing part that an eye of a covered rope uses up, margin included", FigureSort::length},
    {FigureId::short_section, "short_section",
     "the fid's short section: from the throat to where the core is entered", FigureSort::length},
    {FigureId::slip_knot, "slip_knot",
     "from the end to the slip knot that holds cover and core together", FigureSort::length},
    {FigureId::turn_draw, "turn_draw", "rope that an eye passed round a bar uses besides its turns",
     FigureSort::length},
    {FigureId::bar_diameters, "bar_diameters", "thickness taken for a bar that is not known",
     FigureSort::length},
    {FigureId::ring_clearance, "ring_clearance",
     "between a ring and the seizing or stitching that keeps it in", FigureSort::length},
    {FigureId::noose, "noose", "rope that closes a noose round what it holds", FigureSort::length},
    {FigureId::least_size, "least_size", "a caution in rope thinner than this", FigureSort::length},
    {FigureId::tucks_single, "tucks_single",
     "further tucks of an end-for-end splice, with single strands", FigureSort::count},
    {FigureId::tucks_half, "tucks_half", "and then with halved strands", FigureSort::count},
    {FigureId::crowns, "crowns", "crowns that each side of a long splice is unlaid",
     FigureSort::count},
    {FigureId::crown, "crown", "length of one crown along laid rope", FigureSort::length},
    {FigureId::strand_crowns, "strand_crowns",
     "crowns that one strand is unlaid beyond the join, at least", FigureSort::count},
    {FigureId::core_back, "core_back", "core cut back under a cover that is sealed over it",
     FigureSort::length},
    {FigureId::advised_sheave, "advised_sheave", "a caution below this sheave diameter",
     FigureSort::length},
    {FigureId::bend_1, "bend_1", "strength kept in wire bent round 1 of its own diameters",
     FigureSort::share},
    {FigureId::bend_2, "bend_2", "strength kept in wire bent round 2 of its own diameters",
     FigureSort::share},
    {FigureId::bend_4, "bend_4", "strength kept in wire bent round 4 of its own diameters",
     FigureSort::share},
    {FigureId::bend_6, "bend_6", "strength kept in wire bent round 6 of its own diameters",
     FigureSort::share},
    {FigureId::bend_10, "bend_10", "strength kept in wire bent round 10 of its own diameters",
     FigureSort::share},
    {FigureId::bend_15, "bend_15", "strength kept in wire bent round 15 of its own diameters",
     FigureSort::share},
    {FigureId::bend_30, "bend_30", "strength kept in wire bent round 30 of its own diameters",
     FigureSort::share},
    {FigureId::bend_40, "bend_40", "strength kept in wire bent round 40 of its own diameters",
     FigureSort::share},
    {FigureId::elastic_from, "elastic_from",
     "elastic pulled out less than this over its relaxed length hangs slack", FigureSort::share,
     10.0},
    {FigureId::elastic_up_to, "elastic_up_to", "a caution where elastic is pulled out farther",
     FigureSort::share, 10.0},
    {FigureId::elastic_limit, "elastic_limit", "the custom is to pull elastic out no farther",
     FigureSort::share, 10.0},
    {FigureId::elastic_loss, "elastic_loss", "what elastic loses of its pull in its first weeks",
     FigureSort::share},
    {FigureId::pair_tolerance, "pair_tolerance", "how far the lines of a pair may differ in length",
     FigureSort::length},
    {FigureId::slip, "slip", "share of breaking strength at which a knot starts to slip",
     FigureSort::share},
    {FigureId::working_share, "working_share",
     "a caution above this share of the strength after ends and knots", FigureSort::share},
    {FigureId::wind_pressure, "wind_pressure",
     "pull of a sheet at the clew, kgf on a square metre of sail at one knot of apparent wind",
     FigureSort::count},
    {FigureId::boom_pressure, "boom_pressure", "the same of a mainsheet's tackle at the boom",
     FigureSort::count},
    {FigureId::sheave_loss, "sheave_loss",
     "what a sheave of a tackle costs, as a share of its load", FigureSort::share},
    {FigureId::crew_outside, "crew_outside",
     "how far outside the hull the weight of a crew on the wire hangs", FigureSort::length},
});
inline constexpr std::size_t figure_count = figure_table.size();

namespace detail {
/// Whether each row of `figure_table` is that of its own index, named and explained.
consteval bool figures_are_in_order() {
    for (std::size_t i = 0; i < figure_table.size(); ++i) {
        if (static_cast<std::size_t>(figure_table[i].id) != i || figure_table[i].word.empty() ||
            figure_table[i].meaning.empty()) {
            return false;
        }
    }
    return true;
}
} // namespace detail
static_assert(detail::figures_are_in_order(), "each figure has its row, in the order of FigureId");
static_assert(figure_count == static_cast<std::size_t>(FigureId::crew_outside) + 1,
              "the last figure is the last row");

[[nodiscard]] constexpr const FigureDeclaration& declaration_of(FigureId id) {
    return figure_table.at(static_cast<std::size_t>(id));
}
[[nodiscard]] constexpr std::string_view name_of(FigureId id) {
    return declaration_of(id).word;
}
[[nodiscard]] std::optional<FigureId> read_figure_name(std::string_view name);

/// The words of all figures, in order.
inline constexpr auto figure_names = [] {
    std::array<std::string_view, figure_count> words;
    for (std::size_t i = 0; i < figure_count; ++i) {
        words.at(i) = figure_table.at(i).word;
    }
    return words;
}();

/// The highest that a figure may be, in `unit`, so that nothing absurd gets in.
[[nodiscard]] double highest_of(FigureId id, FigureUnit unit);

} // namespace libsplice
