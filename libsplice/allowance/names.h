// The words of a ledger and of the marks on a rope, as small ids.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace libsplice {

/// What a row of a ledger is. Plug-ins' items follow the built-in ones; the book names them.
enum class Item : std::uint16_t {
    finished_length,
    fitting,
    pin_centre,
    stretch,
    slack,
    first_stretch,
    eye_legs,
    throat_to_bearing,
    soft_eye,
    loop_legs,
    knot_to_bearing,
    tail,
    take_up,
    settling,
    crossing,
    crossing_below,
    cover_take_up,
    tucks,
    turn_back,
    knot,
    knot_body,
    end_left,
    further_parts,
    noose,
    round_bearings,
    travel,
    shrinkage,
    ball,
    turns,
    half_hitches,
    short_section,
    overlap,
    unlaid,
    crimp,
    shank,
    insertion,
    growth,
    cutting_loss,
    milk_out,
    extra,
    wear,
    spare,
    rounding,
};
/// Whether rows of this item lie outside the tail of the end that they stand with. A plug-in's lie
/// inside.
[[nodiscard]] constexpr bool lies_outside_tail(Item item) {
    return item >= Item::milk_out && item <= Item::rounding;
}
/// The built-in items' words in order of `Item`.
[[nodiscard]] std::span<const std::string_view> item_names();

/// Rows whose lengths err together. Rows of `own` err on their own.
enum class Group : std::uint16_t {
    own,
    tape,     ///< everything measured with the same tape
    take_up,  ///< the same braid over every bury of a line
    settling, ///< the same hand draws every splice
    hand,     ///< the same hand sets every knot
    rope,     ///< the same measure of the rope: its pick, its core, the body of a knot in it
    cut,      ///< the same way of cutting at both ends
};
[[nodiscard]] std::span<const std::string_view> group_names();

/// A place to mark on the rope. Named for what it is.
enum class MarkName : std::uint16_t {
    tail_end,
    taper_start,
    near_throat,
    crown,
    far_throat,
    bury_end,
    exit,
    cover_end,
    cover_exit,
    cover_taper,
    cover_tail_end,
    unlay,
    pen_end,
    turn_back,
    knot_far_side,
    knot_face,
    loop_near,
    loop_far,
    whipping,
    crossing,
    lap_end,
    seizing_end,
    ball_face,
    knot_standing,
    turns_end,
    load_side,
    reference,
    extraction,
    core_entry,
    core_exit,
    core_out,
    join,
    overlap_end,
    nose_end,
    first_stitch,
    strand_unlay,
    shank_mouth,
    crimp,
    core_end,
    drop_pair_1,
    drop_pair_2,
    drop_pair_3,
    drop_pair_4,
    drop_pair_5,
    drop_pair_6,
    drop_pair_7,
    drop_pair_8,
    drop_pair_9,
    drop_pair_10,
    drop_pair_11,
    clip_1,
    clip_2,
    clip_3,
    clip_4,
    clip_5,
    clip_6,
    clip_7,
    clip_8,
    clip_9,
    clip_10,
    clip_11,
    clip_12,
    trim,
    bearing_point,
};
[[nodiscard]] std::span<const std::string_view> mark_names();

/// Whether the mark is a place at which a pair of strands is dropped from a tail.
[[nodiscard]] constexpr bool drops_pair(MarkName name) {
    return name >= MarkName::drop_pair_1 && name <= MarkName::drop_pair_11;
}

/// A figure of an end that a sheet or a host may want. The words carry the unit, as they are JSON
/// keys.
enum class ValueName : std::uint16_t {
    eye_m,
    pin_m,
    tail_m,
    bury_m,
    taper_m,
    take_up_m,
    take_up_settled_m,
    end_left_m,
    exit_m,
    unlay_m,
    rope_round_eye_m,
    throat_angle_deg,
    fid_m,
    tucks,
    knot_m,
    knot_width_m,
    body_m,
    over_bury_m,
    minimum_bury_m,
    stitch_start_m,
    stitch_end_m,
    cover_tail_m,
    cover_end_m,
    eye_rope_m,
    braid_constant,
    clips,
    turn_back_m,
    spacing_m,
    torque_nm,
    proof,
    bend_ratio,
    bend_retained,
    ball_m,
    spar_m,
    other_m,
    finish_m,
    turns,
    half_hitches,
    gap_m,
    hitch_margin,
    extra_turns,
    load_past_turns,
    bearing_m,
    entry_m,
    core_out_m,
    slip_knot_m,
    overlap_m,
    seizing_m,
    groove_m,
    bore_m,
    travel_m,
    noose_m,
    tucks_single,
    tucks_half,
    crowns,
    crown_m,
    strand_unlay_m,
    short_section_m,
    shank_m,
    insertion_m,
    growth_m,
    crimp_m,
    core_back_m,
    whipping_m,
    shaped_on_m,
    legs_m,
    strands,
    pairs,
    end_section,
    end_step_m,
    end_loss,
    grip_margin,
    grip_margin_low,
    grip_margin_high,
    friction,
    braid_angle_deg,
    packing,
    throat_share,
};
[[nodiscard]] std::span<const std::string_view> value_names();

} // namespace libsplice
