// Lays marks, room and check along the piece.
#include "libsplice/cut/layout.h"

namespace libsplice {

LineEnd free_end(const BoundEnds& ends) {
    return ends.at(LineEnd::a).allowance->milks_cover ? LineEnd::b : LineEnd::a;
}

Nanometres outside_tail(std::span<const LedgerRow> ledger, LineEnd end) {
    Nanometres outside = 0;
    for (const LedgerRow& entry : ledger) {
        if (entry.end == end && lies_outside_tail(entry.row.item)) {
            outside += entry.row.length;
        }
    }
    return outside;
}

Nanometres room_between(const BoundLine& line, const Piece& piece) {
    Nanometres room = piece.cut;
    for (const LineEnd end : both_ends) {
        room -= outside_tail(piece.ledger, end) + line.end(end).allowance->standing_mark;
    }
    return room;
}

void place_marks(const BoundLine& line, Piece& piece) {
    piece.between_marks = piece.cut;
    for (const LineEnd end : both_ends) {
        const Nanometres shift = outside_tail(piece.ledger, end);
        std::size_t number = 0;
        if (shift != 0) {
            piece.marks.push_back({end, MarkName::tail_end, shift, ++number});
        }
        for (const Mark& mark : line.end(end).allowance->marks) {
            piece.marks.push_back({end, mark.name, shift + mark.from_tail_end, ++number});
        }
        const auto& marks = line.end(end).allowance->marks;
        piece.between_marks -= shift + (marks.empty() ? 0 : marks.back().from_tail_end);
    }
}

std::optional<Check> check_figure(const BoundLine& line, const Piece& piece) {
    const auto& last = *line.last().allowance;
    if (line.ends.closing || (!last.made && line.fit.fit != Fit::exact)) {
        return std::nullopt;
    }
    const auto& first = *line.first().allowance;
    const Nanometres standing_to_bearing = first.standing_mark - first.total();
    return Check{line.ends.first_end, other(line.ends.first_end),
                 room_between(line, piece) + standing_to_bearing};
}

} // namespace libsplice
