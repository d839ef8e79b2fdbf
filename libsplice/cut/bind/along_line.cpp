// Reads what a line runs over and through, and what is put on over it.
#include "libsplice/cut/bind/along_line.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

namespace libsplice {

namespace {

std::optional<Length> read_distance(CellReader& cells, Column column) {
    const auto count = cells.length(column, 1);
    return count ? std::optional(from_nanometres(*count)) : std::nullopt;
}

/// `0.6 m at 8.2 m`: finished length and where it starts.
std::optional<Sleeve> read_sleeve(CellReader& cells) {
    const auto text = cells.text(Column::sleeve);
    if (text.empty()) {
        return std::nullopt;
    }
    constexpr std::string_view at = " at ";
    const auto middle = text.find(at);
    const auto length = read_length(trimmed(text.substr(0, middle)));
    const auto from = middle == std::string_view::npos
                          ? length
                          : read_length(trimmed(text.substr(middle + at.size())));
    if (middle == std::string_view::npos || !length || !from || !(length->length > Length()) ||
        from->length < Length()) {
        cells.add(Fault{Code::not_a_length, "\"" + std::string(text) +
                                                "\" must be a length and a place, such as 0.6 m "
                                                "at 8.2 m"},
                  Column::sleeve);
        return std::nullopt;
    }
    return Sleeve{length->length, from->length, length->length, {}, {}};
}

/// Ends that are alike, or only cut, can change places.
void check_turnable(const BoundEnds& ends, CellReader& cells) {
    const auto& a = *ends.at(LineEnd::a).allowance;
    const auto& b = *ends.at(LineEnd::b).allowance;
    const bool plain = !a.made && !b.made;
    if (!plain && &a != &b) {
        cells.add(Fault{Code::cannot_be_both,
                        "a line that is turned end for end needs both ends alike, or only cut and "
                        "whipped"},
                  Column::reversible);
    }
}

/// A sleeve gets shorter as it is opened over the line.
void bind_sleeve(const Rules& rules, CellReader& cells, Sleeve& sleeve) {
    const auto loss = rules.need(FigureId::sleeve_loss);
    if (!loss) {
        cells.add(loss.error(), Column::sleeve);
        return;
    }
    const double kept = 1.0 - loss->number();
    sleeve.cut = sleeve.finished / kept;
    sleeve.sd = sleeve.cut * (loss->number_spread() / kept);
    sleeve.source = loss->source;
}

std::optional<Sourced<Length>> length_of(const Figure* figure, const Rope& rope) {
    return figure == nullptr
               ? std::nullopt
               : std::optional(Sourced<Length>{figure->length(rope.diameter), figure->source});
}

/// Where the cover ends once the line has run `lowered` from its hoisted place.
CoverPlace cover_place(const AlongLine& along, Length cover_end, Length lowered) {
    CoverPlace place;
    if (along.headroom) {
        place.past_sheave = cover_end - *along.headroom - lowered;
    }
    if (along.cleat) {
        place.at_cleat = *along.cleat + lowered - cover_end;
    }
    return place;
}

void place_cover(const End& end_a, AlongLine& along) {
    const auto cover_end = end_a.cover ? end_a.cover->end : std::nullopt;
    if (!cover_end || (!along.headroom && !along.cleat)) {
        return;
    }
    along.cover_hoisted = cover_place(along, *cover_end, Length());
    if (along.travel) {
        along.cover_lowered = cover_place(along, *cover_end, *along.travel);
    }
}

} // namespace

AlongLine read_along_line(CellReader& cells) {
    AlongLine along;
    along.headroom = read_distance(cells, Column::headroom);
    along.travel = read_distance(cells, Column::travel);
    along.cleat = read_distance(cells, Column::cleat);
    along.smallest_hole = read_distance(cells, Column::smallest_hole);
    along.reversible = cells.yes(Column::reversible);
    along.sleeve = read_sleeve(cells);
    return along;
}

AlongLine bind_along_line(AlongLine along, const Rules& rules, const Rope& rope,
                          const BoundEnds& ends, CellReader& cells) {
    along.cover_at_cleat = length_of(rules.find(FigureId::cover_at_cleat), rope);
    along.advised_sheave = length_of(rules.find(FigureId::advised_sheave), rope);
    if (along.sleeve) {
        bind_sleeve(rules, cells, *along.sleeve);
    }
    place_cover(*ends.at(LineEnd::a).allowance, along);
    if (along.reversible) {
        check_turnable(ends, cells);
    }
    return along;
}

} // namespace libsplice
