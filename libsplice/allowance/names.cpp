#include "libsplice/allowance/names.h"

#include <array>

namespace libsplice {

namespace {

constexpr auto items = std::to_array<std::string_view>({"finished length",
                                                        "fitting",
                                                        "pin centre to bearing point",
                                                        "stretch",
                                                        "marked slack",
                                                        "first stretch",
                                                        "rope round the eye",
                                                        "throat to bearing point",
                                                        "soft eye, pin not known",
                                                        "rope round the loop",
                                                        "knot to bearing point",
                                                        "tail",
                                                        "take-up as spliced",
                                                        "settling",
                                                        "crossing closes up",
                                                        "take-up over the cover's tail",
                                                        "tucks",
                                                        "turn-back",
                                                        "knot",
                                                        "knot's body",
                                                        "end left",
                                                        "further parts",
                                                        "noose",
                                                        "rope round the bearings",
                                                        "let-out",
                                                        "shrinkage in the wash",
                                                        "ball",
                                                        "turns",
                                                        "half hitches",
                                                        "short section of the fid",
                                                        "overlap",
                                                        "unlaid strands",
                                                        "cord in the fitting",
                                                        "pin centre to the shank",
                                                        "wire in the shank",
                                                        "growth in the swage",
                                                        "cutting loss",
                                                        "milk-out",
                                                        "extra",
                                                        "wear",
                                                        "spare",
                                                        "rounding"});
static_assert(items.size() == static_cast<std::size_t>(Item::rounding) + 1);

constexpr auto groups =
    std::to_array<std::string_view>({"own", "tape", "take-up", "settling", "hand", "rope", "cut"});
static_assert(groups.size() == static_cast<std::size_t>(Group::cut) + 1);

constexpr auto marks = std::to_array<std::string_view>({"tail end",
                                                        "taper start",
                                                        "near throat",
                                                        "crown",
                                                        "far throat",
                                                        "bury end",
                                                        "exit",
                                                        "cover end",
                                                        "unlay to here",
                                                        "turn back to here",
                                                        "knot, far side",
                                                        "knot, face",
                                                        "loop, tail side",
                                                        "loop, standing side",
                                                        "whipping",
                                                        "crossing",
                                                        "lap end",
                                                        "seizing end",
                                                        "ball, bearing face",
                                                        "knot, standing side",
                                                        "turns end here",
                                                        "hitch, load side",
                                                        "reference",
                                                        "extraction",
                                                        "core, entry",
                                                        "core, exit",
                                                        "join",
                                                        "overlap end",
                                                        "nose end",
                                                        "first stitch",
                                                        "unlay one strand to here",
                                                        "shank's mouth",
                                                        "fitting's mouth",
                                                        "cut the core back to here",
                                                        "drop pair 1",
                                                        "drop pair 2",
                                                        "drop pair 3",
                                                        "drop pair 4",
                                                        "drop pair 5",
                                                        "drop pair 6",
                                                        "drop pair 7",
                                                        "drop pair 8",
                                                        "drop pair 9",
                                                        "drop pair 10",
                                                        "drop pair 11",
                                                        "trim",
                                                        "bearing point"});
static_assert(marks.size() == static_cast<std::size_t>(MarkName::bearing_point) + 1);

constexpr auto values = std::to_array<std::string_view>({"eye_m",
                                                         "pin_m",
                                                         "tail_m",
                                                         "bury_m",
                                                         "taper_m",
                                                         "take_up_m",
                                                         "take_up_settled_m",
                                                         "end_left_m",
                                                         "exit_m",
                                                         "unlay_m",
                                                         "rope_round_eye_m",
                                                         "throat_angle_deg",
                                                         "fid_m",
                                                         "tucks",
                                                         "knot_m",
                                                         "knot_width_m",
                                                         "body_m",
                                                         "over_bury_m",
                                                         "minimum_bury_m",
                                                         "stitch_start_m",
                                                         "stitch_end_m",
                                                         "cover_tail_m",
                                                         "cover_end_m",
                                                         "eye_rope_m",
                                                         "braid_constant",
                                                         "clips",
                                                         "turn_back_m",
                                                         "spacing_m",
                                                         "bend_ratio",
                                                         "bend_retained",
                                                         "ball_m",
                                                         "spar_m",
                                                         "other_m",
                                                         "finish_m",
                                                         "turns",
                                                         "half_hitches",
                                                         "gap_m",
                                                         "hitch_margin",
                                                         "extra_turns",
                                                         "load_past_turns",
                                                         "bearing_m",
                                                         "entry_m",
                                                         "slip_knot_m",
                                                         "overlap_m",
                                                         "seizing_m",
                                                         "groove_m",
                                                         "bore_m",
                                                         "travel_m",
                                                         "noose_m",
                                                         "tucks_single",
                                                         "tucks_half",
                                                         "crowns",
                                                         "crown_m",
                                                         "strand_unlay_m",
                                                         "short_section_m",
                                                         "shank_m",
                                                         "insertion_m",
                                                         "growth_m",
                                                         "crimp_m",
                                                         "core_back_m",
                                                         "whipping_m",
                                                         "shaped_on_m",
                                                         "legs_m",
                                                         "strands",
                                                         "pairs",
                                                         "end_section",
                                                         "end_step_m",
                                                         "end_loss",
                                                         "grip_margin",
                                                         "grip_margin_low",
                                                         "grip_margin_high",
                                                         "friction",
                                                         "braid_angle_deg",
                                                         "packing",
                                                         "throat_share"});
static_assert(values.size() == static_cast<std::size_t>(ValueName::throat_share) + 1);

} // namespace

std::span<const std::string_view> item_names() {
    return items;
}

std::span<const std::string_view> group_names() {
    return groups;
}

std::span<const std::string_view> mark_names() {
    return marks;
}

std::span<const std::string_view> value_names() {
    return values;
}

} // namespace libsplice
