// The words for figures, and how a figure is scaled from its unit.
#include "libsplice/catalogue/figure.h"

#include <gsl/assert>

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr auto figure_words = std::to_array<std::string_view>({"tail",
                                                               "minimum_tail",
                                                               "advised_tail",
                                                               "person_tail",
                                                               "taper",
                                                               "exit",
                                                               "fid",
                                                               "fid_metric",
                                                               "stitch_start",
                                                               "stitch_length",
                                                               "setting",
                                                               "crossing",
                                                               "braid_constant",
                                                               "take_up_spread",
                                                               "take_up_tail",
                                                               "take_up_taper",
                                                               "braid_angle",
                                                               "packing",
                                                               "self_friction",
                                                               "throat_share",
                                                               "strands",
                                                               "blunt_loss",
                                                               "tucks",
                                                               "minimum_tucks",
                                                               "per_tuck",
                                                               "picks_per_tuck",
                                                               "pick",
                                                               "end_left",
                                                               "minimum_end_left",
                                                               "knot",
                                                               "set",
                                                               "knot_width",
                                                               "body",
                                                               "beyond_loop",
                                                               "turns",
                                                               "standing_side",
                                                               "bight",
                                                               "beyond_turns",
                                                               "half_hitches",
                                                               "per_half_hitch",
                                                               "friction",
                                                               "eye_pins",
                                                               "eye_diameters",
                                                               "advised_eye_pins",
                                                               "throat_limit",
                                                               "clips",
                                                               "turn_back",
                                                               "clip_spacing",
                                                               "usual_turn_back",
                                                               "proof",
                                                               "torque",
                                                               "retained",
                                                               "core_share",
                                                               "cover_tail",
                                                               "cover_gap",
                                                               "heat_cut",
                                                               "shear_cut",
                                                               "whipping",
                                                               "whipping_offset",
                                                               "first_stretch",
                                                               "slack",
                                                               "milk_out",
                                                               "minimum_milk_out",
                                                               "stretch",
                                                               "stretch_spread",
                                                               "tape_fixed",
                                                               "tape_share",
                                                               "design_factor",
                                                               "minimum_strength",
                                                               "cover_at_cleat",
                                                               "sleeve_loss",
                                                               "shrinkage",
                                                               "overlap",
                                                               "seizing",
                                                               "shortening",
                                                               "short_section",
                                                               "core_out",
                                                               "slip_knot",
                                                               "turn_draw",
                                                               "bar_diameters",
                                                               "ring_clearance",
                                                               "noose",
                                                               "least_size",
                                                               "tucks_single",
                                                               "tucks_half",
                                                               "crowns",
                                                               "crown",
                                                               "strand_crowns",
                                                               "core_back",
                                                               "advised_sheave",
                                                               "bend_1",
                                                               "bend_2",
                                                               "bend_4",
                                                               "bend_6",
                                                               "bend_10",
                                                               "bend_15",
                                                               "bend_30",
                                                               "bend_40",
                                                               "elastic_from",
                                                               "elastic_up_to",
                                                               "elastic_limit",
                                                               "elastic_loss",
                                                               "pair_tolerance",
                                                               "core_alone",
                                                               "slip",
                                                               "working_share"});
static_assert(figure_words.size() == static_cast<std::size_t>(FigureId::working_share) + 1);

constexpr auto unit_words = std::to_array<std::string_view>(
    {"", "%", "D", "picks", "mm", "cm", "m", "in", "ft", "deg", "N", "lbf"});

template <class Word, std::size_t N>
std::optional<Word> read_word(const std::array<std::string_view, N>& words, std::string_view name) {
    const auto found = std::ranges::find(words, name);
    if (found == words.end()) {
        return std::nullopt;
    }
    return static_cast<Word>(found - words.begin());
}

} // namespace

std::span<const std::string_view> figure_names() {
    return figure_words;
}

std::string_view name_of(FigureId id) {
    return figure_words[static_cast<std::size_t>(id)];
}

std::optional<FigureId> read_figure_name(std::string_view name) {
    return read_word<FigureId>(figure_words, name);
}

std::optional<FigureUnit> read_figure_unit(std::string_view name) {
    return read_word<FigureUnit>(unit_words, name);
}

std::string_view name_of(FigureUnit unit) {
    return unit_words[static_cast<std::size_t>(unit)];
}

std::string_view name_of(SpreadOrigin origin) {
    constexpr auto origins =
        std::to_array<std::string_view>({"none", "measured", "printed range", "stated guess"});
    return origins[static_cast<std::size_t>(origin)];
}

Length Figure::scale(Length rope) const {
    switch (unit) {
    case FigureUnit::diameters:
        return rope;
    case FigureUnit::mm:
        return metres(0.001);
    case FigureUnit::cm:
        return metres(0.01);
    case FigureUnit::m:
        return metres(1.0);
    case FigureUnit::in:
        return metres(metres_per_inch);
    case FigureUnit::ft:
        return metres(12.0 * metres_per_inch);
    default:
        break;
    }
    Expects(false && "a figure that is no length is used as one");
    return {};
}

} // namespace libsplice
