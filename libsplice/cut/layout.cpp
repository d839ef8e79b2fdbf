// Lays marks, room and check along the piece.
#include "libsplice/cut/layout.h"

#include <algorithm>

namespace libsplice {

namespace {

/// The mark where the standing part of an end begins.
std::optional<MarkName> standing_mark_of(const End& end) {
    const auto mark = std::ranges::find(end.marks, end.standing_mark, &Mark::from_tail_end);
    return mark == end.marks.end() ? std::nullopt : std::optional(mark->name);
}

/// From the last mark of one end to that of the other. If they cross, from where the standing part
/// begins.
void set_between(const BoundLine& line, Piece& piece) {
    Nanometres between = piece.cut;
    for (const LineEnd end : both_ends) {
        const auto& marks = line.end(end).allowance->marks;
        auto& name = piece.between[static_cast<std::size_t>(end)];
        name = marks.empty() ? std::nullopt : std::optional(marks.back().name);
        between -= piece.outside(end) + (marks.empty() ? 0 : marks.back().from_tail_end);
    }
    if (between >= 0) {
        piece.between_marks = between;
        return;
    }
    piece.between_marks = room_between(line, piece);
    for (const LineEnd end : both_ends) {
        piece.between[static_cast<std::size_t>(end)] = standing_mark_of(*line.end(end).allowance);
    }
}

} // namespace

LineEnd free_end(const BoundEnds& ends) {
    return ends.at(LineEnd::a).allowance->milks_cover ? LineEnd::b : LineEnd::a;
}

Nanometres room_between(const BoundLine& line, const Piece& piece) {
    Nanometres room = piece.cut;
    for (const LineEnd end : both_ends) {
        room -= piece.outside(end) + line.end(end).allowance->standing_mark;
    }
    return room;
}

bool has_outside(const BoundLine& line, LineEnd end) {
    return end == line.ends.last_end() || keeps_rope(line, end) ||
           (line.states.milk_out && end == free_end(line.ends));
}

bool keeps_rope(const BoundLine& line, LineEnd end) {
    return end == line.fit.kept_at && line.fit.extra + line.fit.wear > 0;
}

std::size_t marks_outside(const BoundLine& line, LineEnd end) {
    if (!has_outside(line, end)) {
        return 0;
    }
    return keeps_rope(line, end) && line.end(end).allowance->made ? 2 : 1;
}

std::size_t marks_on_the_very_end(const BoundLine& line, const Piece& piece, LineEnd end) {
    const std::size_t outside = marks_outside(line, end);
    const Nanometres kept = outside > 1 ? line.fit.extra + line.fit.wear : 0;
    return outside > 0 && piece.outside(end) == kept ? 1 : 0;
}

void place_marks(const BoundLine& line, Piece& piece) {
    for (const LineEnd end : both_ends) {
        const Nanometres shift = piece.outside(end);
        std::size_t number = 0;
        const std::size_t outside =
            marks_outside(line, end) - marks_on_the_very_end(line, piece, end);
        if (outside > 1) {
            const Nanometres kept = line.fit.extra + line.fit.wear;
            piece.marks.push_back({end, MarkName::trim, shift - kept, ++number});
        }
        if (outside > 0) {
            piece.marks.push_back({end, MarkName::tail_end, shift, ++number});
        }
        for (const Mark& mark : line.end(end).allowance->marks) {
            piece.marks.push_back(
                {end, mark.name, shift + mark.from_tail_end, number + mark.number});
        }
    }
    set_between(line, piece);
}

bool has_check(const BoundLine& line) {
    const bool both_made = line.first().allowance->made && line.last().allowance->made;
    return !line.ends.closing && (both_made || line.fit.fit == Fit::exact);
}

std::optional<Check> check_figure(const BoundLine& line, const Piece& piece) {
    if (!has_check(line)) {
        return std::nullopt;
    }
    const auto& first = *line.first().allowance;
    const Nanometres standing_to_bearing = first.standing_mark - first.total();
    Nanometres settles = 0;
    for (const Row& row : first.rows) {
        if (row.item == Item::settling || row.item == Item::crossing) {
            settles += row.length;
        }
    }
    const Nanometres loaded = room_between(line, piece) + standing_to_bearing;
    return Check{line.ends.first_end, line.ends.last_end(), loaded + settles, loaded};
}

} // namespace libsplice
