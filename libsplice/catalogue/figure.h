// One number of a table, as printed, with its spread and its source.
#pragma once

#include "libsplice/catalogue/citation.h"
#include "libsplice/units/quantity.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// What a figure says. One vocabulary for all tables; figure_names() gives the word of each.
enum class FigureId : std::uint8_t {
    tail,             ///< whole end beyond the throat, or what is left past a knot
    minimum_tail,     ///< refused below this
    advised_tail,     ///< a caution below this
    person_tail,      ///< refused below this on a line that carries a person
    taper,            ///< part of the tail that is thinned out
    exit,             ///< how far the fid reaches along the host, from the throat; no rope lost
    fid,              ///< one full fid length, on rope sized in inches
    fid_metric,       ///< likewise, on rope sized in millimetres
    stitch_start,     ///< lock stitching: from the throat to its first stitch
    stitch_length,    ///< lock stitching: its length
    setting,          ///< how much of the bury draws out at first load
    crossing,         ///< how much a locked crossing closes up at first load
    braid_constant,   ///< K of the braid over a bury
    take_up_spread,   ///< standard deviation of one end's take-up
    take_up_tail,     ///< the tail that the spread is stated for
    take_up_taper,    ///< and how much of it is thinned
    braid_angle,      ///< of strand to axis in an empty hollow braid
    packing,          ///< of a buried tail: 1 as the rope itself
    self_friction,    ///< coefficient of friction of a fibre on itself, inside a bury
    throat_share,     ///< share of the load that the tail carries at the throat
    strands,          ///< strands of a hollow braid
    blunt_loss,       ///< strength lost where a tail ends with its whole section
    tucks,            ///< full tucks
    minimum_tucks,    ///< refused below this
    per_tuck,         ///< strand length unlaid for one tuck
    picks_per_tuck,   ///< picks of a plait for one tuck
    pick,             ///< length of one pick along the rope
    end_left,         ///< what is left past the last tuck or a fitting
    minimum_end_left, ///< refused below this
    knot,             ///< rope a tight knot uses up: its length less the distance of its ends
    set,              ///< what a hand-set knot uses as a multiple of a tight one
    knot_width,       ///< least width of a tight knot across the line
    body,             ///< length of the knot along the rope
    beyond_loop,      ///< rope beyond the two legs of a knotted loop, less its tail
    turns,            ///< full turns of a hitch or lashing
    standing_side,    ///< part of beyond_loop that lies on the standing side of the loop
    bight,            ///< second leg of a bight in a bend, from its crown to where it leaves
    beyond_turns,     ///< rope in a hitch besides its turns, less its tail
    half_hitches,     ///< half hitches that finish a lashing
    per_half_hitch,   ///< rope in one of them, its share of the tail included
    friction,         ///< coefficient of friction of the rope on what it lies round
    eye_pins,         ///< inside length of an eye in pin diameters
    eye_diameters,    ///< inside length of an eye in rope diameters, at least
    advised_eye_pins, ///< a caution below this many pin diameters
    throat_limit,     ///< largest included angle at the throat
    clips,            ///< number of wire-rope clips
    turn_back,        ///< wire turned back from the throat
    clip_spacing,     ///< from clip to clip
    usual_turn_back,  ///< of a pressed sleeve: a caution below this
    proof,            ///< share of the strength that a pressed sleeve is loaded to
    torque,           ///< on the nuts of a wire-rope clip, in pound-feet
    retained,         ///< strength that the end retains
    core_share,       ///< core diameter as a share of the nominal diameter
    cover_tail,       ///< cover kept beyond the cover end, led into the core
    cover_gap,        ///< bare core between the bury and the cover's tail
    heat_cut,         ///< rope lost in a heat cut
    shear_cut,        ///< rope lost in a cut with shears through tape
    whipping,         ///< length of a whipping
    whipping_offset,  ///< from the cut end to the whipping
    first_stretch,    ///< permanent elongation of new rope at first loads
    slack,            ///< rope measured slack against rope at the reference tension
    milk_out,         ///< cover pushed out at the free end, as a share of the length
    minimum_milk_out, ///< and at least this
    stretch,          ///< elongation at a load; a table gives it as a RopeStretch
    stretch_spread,   ///< spread of a stretch that is printed without one, as a share of it
    tape_fixed,       ///< error limit of a tape measure: fixed part
    tape_share,       ///< error limit of a tape measure: part in proportion to length
    design_factor,    ///< breaking strength over load that a rule asks for
    minimum_strength, ///< breaking strength that a rule asks for
    cover_at_cleat,   ///< cover that has to lie beyond the cleat, hoisted
    sleeve_loss,      ///< how much shorter a sleeve gets as it is opened over a line
    shrinkage,        ///< how much shorter rope gets when it is washed or soaked
    overlap,          ///< length over which two parts lie side by side and are stitched
    seizing,          ///< length of a seizing
    shortening,       ///< standing part that an eye of a covered rope uses up, margin included
    short_section,    ///< the fid's short section: from the throat to where the core is entered
    core_out,         ///< from the throat to where a core led round the eye leaves the cover
    slip_knot,        ///< from the end to the slip knot that holds cover and core together
    turn_draw,        ///< rope that an eye passed round a bar uses besides its turns
    bar_diameters,    ///< thickness taken for a bar that is not known
    ring_clearance,   ///< between a ring and the seizing or stitching that keeps it in
    noose,            ///< rope that closes a noose round what it holds
    least_size,       ///< a caution in rope thinner than this
    tucks_single,     ///< further tucks of an end-for-end splice, with single strands
    tucks_half,       ///< and then with halved strands
    crowns,           ///< crowns that each side of a long splice is unlaid
    crown,            ///< length of one crown along laid rope
    strand_crowns,    ///< crowns that one strand is unlaid beyond the join, at least
    core_back,        ///< core cut back under a cover that is sealed over it
    advised_sheave,   ///< a caution below this sheave diameter
    bend_1,           ///< strength kept in wire bent round 1 of its own diameters
    bend_2,           ///< strength kept in wire bent round 2 of its own diameters
    bend_4,           ///< strength kept in wire bent round 4 of its own diameters
    bend_6,           ///< strength kept in wire bent round 6 of its own diameters
    bend_10,          ///< strength kept in wire bent round 10 of its own diameters
    bend_15,          ///< strength kept in wire bent round 15 of its own diameters
    bend_30,          ///< strength kept in wire bent round 30 of its own diameters
    bend_40,          ///< strength kept in wire bent round 40 of its own diameters
    elastic_from,     ///< elastic pulled out less than this over its relaxed length hangs slack
    elastic_up_to,    ///< a caution where elastic is pulled out farther
    elastic_limit,    ///< the custom is to pull elastic out no farther
    elastic_loss,     ///< what elastic loses of its pull in its first weeks
    pair_tolerance,   ///< how far the lines of a pair may differ in length
    core_alone,       ///< strength kept where the core alone of a double braid is joined
    slip,             ///< share of breaking strength at which a knot starts to slip
    working_share,    ///< a caution above this share of the strength after ends and knots
};

[[nodiscard]] std::span<const std::string_view> figure_names();
[[nodiscard]] std::string_view name_of(FigureId id);
[[nodiscard]] std::optional<FigureId> read_figure_name(std::string_view name);

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

/// Where a standard deviation comes from.
enum class SpreadOrigin : std::uint8_t { none, measured, printed_range, stated_guess };
[[nodiscard]] std::string_view name_of(SpreadOrigin origin);

/// A figure as it stands in a table. `value`, `sd` and the limits are in the printed unit.
struct Figure {
    double value = 0.0;
    double sd = 0.0;
    double low = 0.0;  ///< the lowest it may be: as printed, else what its spread comes to
    double high = 0.0; ///< the highest
    FigureUnit unit = FigureUnit::none;
    SpreadOrigin origin = SpreadOrigin::none;
    CitationId source{};

    /// The figure as a length on rope of diameter `rope`. The unit must be a length, diameters, or
    /// a count of them; percentages and counts are not lengths.
    [[nodiscard]] Length length(Length rope) const { return scale(rope) * value; }
    [[nodiscard]] Length spread(Length rope) const { return scale(rope) * sd; }
    /// A count as it is, a percentage as a share of one, degrees as degrees.
    [[nodiscard]] double number() const { return value * factor(); }
    [[nodiscard]] double number_spread() const { return sd * factor(); }
    [[nodiscard]] double lowest_number() const { return low * factor(); }
    [[nodiscard]] double highest_number() const { return high * factor(); }

  private:
    [[nodiscard]] Length scale(Length rope) const;
    [[nodiscard]] double factor() const { return unit == FigureUnit::percent ? 0.01 : 1.0; }
};

} // namespace libsplice
