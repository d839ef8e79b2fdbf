// The cover begins as far above the cleat as the tables ask for, and the eye keeps its size and
// pin.
#include "libsplice/choose/hybrid.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace libsplice {

namespace {

constexpr std::string_view stripped_eye = "stripped-eye";

/// What a loop or an eye has that a stripped eye has too, under the name there.
std::optional<std::string_view> field_of_eye(std::string_view field) {
    constexpr std::array<std::string_view, 5> kept{"eye", "pin", "fitting", "fitting_length",
                                                   "measured"};
    if (field == "loop") {
        return "eye";
    }
    const auto known = std::ranges::find(kept, field);
    return known == kept.end() ? std::nullopt : std::optional(*known);
}

std::optional<Length> bare_length(const PlacedLine& placed, const Rules& rules, const Rope& rope) {
    std::vector<Fault> unheard;
    CellReader cells(placed.line, unheard);
    const auto cleat = cells.length(Column::cleat, 1);
    const Figure* cover = rules.find(FigureId::cover_at_cleat);
    if (!cleat || cover == nullptr) {
        return std::nullopt;
    }
    const Length bare = from_nanometres(*cleat) - cover->length(rope.diameter);
    return bare > Length() ? std::optional(bare) : std::nullopt;
}

} // namespace

std::optional<HybridLine> HybridLine::of(const PlacedLine& placed, const Needs& needs,
                                         const Rules& rules, const Rope& rope) {
    const bool held = std::ranges::find(needs.held_by, Holder::cleat) != needs.held_by.end();
    const auto bare = bare_length(placed, rules, rope);
    if (!held || !bare || !placed.line.text(Column::strip).empty()) {
        return std::nullopt;
    }
    HybridLine hybrid(placed.line);
    bool has_size = false;
    for (const EndFieldCell& field : placed.line.fields) {
        if (field.end == LineEnd::b) {
            hybrid.fields_.push_back(field);
        } else if (const auto name = field_of_eye(field.field)) {
            hybrid.fields_.push_back({field.end, *name, field.cell});
            has_size = has_size || *name == "eye";
        }
    }
    if (!has_size) {
        return std::nullopt;
    }
    const Nanometres millimetres = to_nanometres(*bare) / 1'000'000;
    hybrid.strip_ = std::to_string(millimetres) + " mm";
    return hybrid;
}

JobLine HybridLine::line() const {
    JobLine line = line_;
    line.cells.at(static_cast<std::size_t>(Column::end_a)) = Cell{.text = stripped_eye};
    line.cells.at(static_cast<std::size_t>(Column::strip)) = Cell{.text = strip_};
    line.fields = fields_;
    return line;
}

std::string HybridLine::in_words() const {
    return "end_a = " + std::string(stripped_eye) + ", strip = " + strip_;
}

} // namespace libsplice
