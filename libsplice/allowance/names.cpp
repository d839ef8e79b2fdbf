// The words of rows, marks and values.
#include "libsplice/allowance/names.h"

#include <array>

namespace libsplice {

namespace {

/// What an id is called.
template <class Id>
struct Word {
    Id id;
    std::string_view word;
};

/// Whether the rows name every id once, in order, up to the last.
template <class Id, std::size_t Count>
constexpr bool says_each(const std::array<Word<Id>, Count>& rows, Id last) {
    for (std::size_t i = 0; i < Count; ++i) {
        if (rows[i].id != Id(i) || rows[i].word.empty()) {
            return false;
        }
    }
    return Count == static_cast<std::size_t>(last) + 1;
}

template <class Id, std::size_t Count>
constexpr std::array<std::string_view, Count> words_of(const std::array<Word<Id>, Count>& rows) {
    std::array<std::string_view, Count> words;
    for (std::size_t i = 0; i < Count; ++i) {
        words[i] = rows[i].word;
    }
    return words;
}

constexpr auto items = std::to_array<Word<Item>>({
    {Item::finished_length, "finished length"},
    {Item::fitting, "fitting"},
    {Item::pin_centre, "pin centre to bearing point"},
    {Item::stretch, "stretch"},
    {Item::slack, "marked slack"},
    {Item::first_stretch, "first stretch"},
    {Item::eye_legs, "rope round the eye"},
    {Item::throat_to_bearing, "throat to bearing point"},
    {Item::soft_eye, "soft eye, pin not known"},
    {Item::loop_legs, "rope round the loop"},
    {Item::knot_to_bearing, "knot to bearing point"},
    {Item::tail, "tail"},
    {Item::take_up, "take-up as spliced"},
    {Item::settling, "settling"},
    {Item::crossing, "crossing closes up"},
    {Item::crossing_below, "crossing below the throat"},
    {Item::cover_take_up, "take-up over the cover's tail"},
    {Item::tucks, "tucks"},
    {Item::turn_back, "turn-back"},
    {Item::knot, "knot"},
    {Item::knot_body, "knot's body"},
    {Item::end_left, "end left"},
    {Item::further_parts, "further parts"},
    {Item::noose, "noose"},
    {Item::round_bearings, "rope round the bearings"},
    {Item::travel, "let-out"},
    {Item::shrinkage, "shrinkage in the wash"},
    {Item::ball, "ball"},
    {Item::turns, "turns"},
    {Item::half_hitches, "half hitches"},
    {Item::short_section, "short section of the fid"},
    {Item::overlap, "overlap"},
    {Item::unlaid, "unlaid strands"},
    {Item::crimp, "cord in the fitting"},
    {Item::shank, "pin centre to the shank"},
    {Item::insertion, "wire in the shank"},
    {Item::growth, "growth in the swage"},
    {Item::cutting_loss, "cutting loss"},
    {Item::milk_out, "milk-out"},
    {Item::extra, "extra"},
    {Item::wear, "wear"},
    {Item::spare, "spare"},
    {Item::rounding, "rounding"},
});
static_assert(says_each(items, Item::rounding));

constexpr auto groups = std::to_array<Word<Group>>({
    {Group::own, "own"},
    {Group::tape, "tape"},
    {Group::take_up, "take-up"},
    {Group::settling, "settling"},
    {Group::hand, "hand"},
    {Group::rope, "rope"},
    {Group::cut, "cut"},
});
static_assert(says_each(groups, Group::cut));

constexpr auto marks = std::to_array<Word<MarkName>>({
    {MarkName::tail_end, "tail end"},
    {MarkName::taper_start, "taper start"},
    {MarkName::near_throat, "near throat"},
    {MarkName::crown, "crown"},
    {MarkName::far_throat, "far throat"},
    {MarkName::bury_end, "bury end"},
    {MarkName::exit, "exit"},
    {MarkName::cover_end, "cover end"},
    {MarkName::cover_exit, "cover's tail, exit"},
    {MarkName::cover_taper, "cover's tail, taper start"},
    {MarkName::cover_tail_end, "cover's tail, end"},
    {MarkName::unlay, "unlay to here"},
    {MarkName::pen_end, "pen lines to here"},
    {MarkName::turn_back, "turn back to here"},
    {MarkName::knot_far_side, "knot, far side"},
    {MarkName::knot_face, "knot, face"},
    {MarkName::loop_near, "loop, tail side"},
    {MarkName::loop_far, "loop, standing side"},
    {MarkName::whipping, "whipping"},
    {MarkName::crossing, "crossing"},
    {MarkName::lap_end, "lap end"},
    {MarkName::seizing_end, "seizing end"},
    {MarkName::ball_face, "ball, bearing face"},
    {MarkName::knot_standing, "knot, standing side"},
    {MarkName::turns_end, "turns end here"},
    {MarkName::load_side, "hitch, load side"},
    {MarkName::reference, "reference"},
    {MarkName::extraction, "extraction"},
    {MarkName::core_entry, "core, entry"},
    {MarkName::core_exit, "core, exit"},
    {MarkName::core_out, "core, out of the cover"},
    {MarkName::join, "join"},
    {MarkName::overlap_end, "overlap end"},
    {MarkName::nose_end, "nose end"},
    {MarkName::first_stitch, "first stitch"},
    {MarkName::strand_unlay, "unlay one strand to here"},
    {MarkName::shank_mouth, "shank's mouth"},
    {MarkName::crimp, "fitting's mouth"},
    {MarkName::core_end, "cut the core back to here"},
    {MarkName::drop_pair_1, "drop pair 1"},
    {MarkName::drop_pair_2, "drop pair 2"},
    {MarkName::drop_pair_3, "drop pair 3"},
    {MarkName::drop_pair_4, "drop pair 4"},
    {MarkName::drop_pair_5, "drop pair 5"},
    {MarkName::drop_pair_6, "drop pair 6"},
    {MarkName::drop_pair_7, "drop pair 7"},
    {MarkName::drop_pair_8, "drop pair 8"},
    {MarkName::drop_pair_9, "drop pair 9"},
    {MarkName::drop_pair_10, "drop pair 10"},
    {MarkName::drop_pair_11, "drop pair 11"},
    {MarkName::clip_1, "clip 1"},
    {MarkName::clip_2, "clip 2"},
    {MarkName::clip_3, "clip 3"},
    {MarkName::clip_4, "clip 4"},
    {MarkName::clip_5, "clip 5"},
    {MarkName::clip_6, "clip 6"},
    {MarkName::clip_7, "clip 7"},
    {MarkName::clip_8, "clip 8"},
    {MarkName::clip_9, "clip 9"},
    {MarkName::clip_10, "clip 10"},
    {MarkName::clip_11, "clip 11"},
    {MarkName::clip_12, "clip 12"},
    {MarkName::trim, "trim"},
    {MarkName::bearing_point, "bearing point"},
});
static_assert(says_each(marks, MarkName::bearing_point));

constexpr auto values = std::to_array<Word<ValueName>>({
    {ValueName::eye_m, "eye_m"},
    {ValueName::pin_m, "pin_m"},
    {ValueName::tail_m, "tail_m"},
    {ValueName::bury_m, "bury_m"},
    {ValueName::taper_m, "taper_m"},
    {ValueName::take_up_m, "take_up_m"},
    {ValueName::take_up_settled_m, "take_up_settled_m"},
    {ValueName::end_left_m, "end_left_m"},
    {ValueName::exit_m, "exit_m"},
    {ValueName::unlay_m, "unlay_m"},
    {ValueName::rope_round_eye_m, "rope_round_eye_m"},
    {ValueName::throat_angle_deg, "throat_angle_deg"},
    {ValueName::fid_m, "fid_m"},
    {ValueName::tucks, "tucks"},
    {ValueName::knot_m, "knot_m"},
    {ValueName::knot_width_m, "knot_width_m"},
    {ValueName::body_m, "body_m"},
    {ValueName::over_bury_m, "over_bury_m"},
    {ValueName::minimum_bury_m, "minimum_bury_m"},
    {ValueName::stitch_start_m, "stitch_start_m"},
    {ValueName::stitch_end_m, "stitch_end_m"},
    {ValueName::cover_tail_m, "cover_tail_m"},
    {ValueName::cover_end_m, "cover_end_m"},
    {ValueName::eye_rope_m, "eye_rope_m"},
    {ValueName::braid_constant, "braid_constant"},
    {ValueName::clips, "clips"},
    {ValueName::turn_back_m, "turn_back_m"},
    {ValueName::spacing_m, "spacing_m"},
    {ValueName::torque_nm, "torque_nm"},
    {ValueName::proof, "proof"},
    {ValueName::bend_ratio, "bend_ratio"},
    {ValueName::bend_retained, "bend_retained"},
    {ValueName::ball_m, "ball_m"},
    {ValueName::spar_m, "spar_m"},
    {ValueName::other_m, "other_m"},
    {ValueName::finish_m, "finish_m"},
    {ValueName::turns, "turns"},
    {ValueName::half_hitches, "half_hitches"},
    {ValueName::gap_m, "gap_m"},
    {ValueName::hitch_margin, "hitch_margin"},
    {ValueName::extra_turns, "extra_turns"},
    {ValueName::load_past_turns, "load_past_turns"},
    {ValueName::bearing_m, "bearing_m"},
    {ValueName::entry_m, "entry_m"},
    {ValueName::core_out_m, "core_out_m"},
    {ValueName::slip_knot_m, "slip_knot_m"},
    {ValueName::overlap_m, "overlap_m"},
    {ValueName::seizing_m, "seizing_m"},
    {ValueName::groove_m, "groove_m"},
    {ValueName::bore_m, "bore_m"},
    {ValueName::travel_m, "travel_m"},
    {ValueName::noose_m, "noose_m"},
    {ValueName::tucks_single, "tucks_single"},
    {ValueName::tucks_half, "tucks_half"},
    {ValueName::crowns, "crowns"},
    {ValueName::crown_m, "crown_m"},
    {ValueName::strand_unlay_m, "strand_unlay_m"},
    {ValueName::short_section_m, "short_section_m"},
    {ValueName::shank_m, "shank_m"},
    {ValueName::insertion_m, "insertion_m"},
    {ValueName::growth_m, "growth_m"},
    {ValueName::crimp_m, "crimp_m"},
    {ValueName::core_back_m, "core_back_m"},
    {ValueName::whipping_m, "whipping_m"},
    {ValueName::shaped_on_m, "shaped_on_m"},
    {ValueName::legs_m, "legs_m"},
    {ValueName::strands, "strands"},
    {ValueName::pairs, "pairs"},
    {ValueName::end_section, "end_section"},
    {ValueName::end_step_m, "end_step_m"},
    {ValueName::end_loss, "end_loss"},
    {ValueName::grip_margin, "grip_margin"},
    {ValueName::grip_margin_low, "grip_margin_low"},
    {ValueName::grip_margin_high, "grip_margin_high"},
    {ValueName::friction, "friction"},
    {ValueName::braid_angle_deg, "braid_angle_deg"},
    {ValueName::packing, "packing"},
    {ValueName::throat_share, "throat_share"},
});
static_assert(says_each(values, ValueName::throat_share));

} // namespace

std::span<const std::string_view> item_names() {
    static constexpr auto words = words_of(items);
    return words;
}

std::span<const std::string_view> group_names() {
    static constexpr auto words = words_of(groups);
    return words;
}

std::span<const std::string_view> mark_names() {
    static constexpr auto words = words_of(marks);
    return words;
}

std::span<const std::string_view> value_names() {
    static constexpr auto words = words_of(values);
    return words;
}

} // namespace libsplice
