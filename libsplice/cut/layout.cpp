#include "libsplice/cut/layout.h"

namespace libsplice {

LineEnd free_end(const LinePlan& plan) {
    return plan.end(LineEnd::a).allowance->milks_cover ? LineEnd::b : LineEnd::a;
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

Nanometres room_between(const LinePlan& plan, const Piece& piece) {
    Nanometres room = piece.cut;
    for (const LineEnd end : both_ends) {
        room -= outside_tail(piece.ledger, end) + plan.end(end).allowance->standing_mark;
    }
    return room;
}

void place_marks(const LinePlan& plan, Piece& piece) {
    piece.marks.clear();
    piece.between_marks = piece.cut;
    for (const LineEnd end : both_ends) {
        const Nanometres shift = outside_tail(piece.ledger, end);
        std::size_t number = 0;
        if (shift != 0) {
            piece.marks.push_back({end, MarkName::tail_end, shift, ++number});
        }
        for (const Mark& mark : plan.end(end).allowance->marks) {
            piece.marks.push_back({end, mark.name, shift + mark.from_tail_end, ++number});
        }
        const auto& marks = plan.end(end).allowance->marks;
        piece.between_marks -= shift + (marks.empty() ? 0 : marks.back().from_tail_end);
    }
}

std::optional<Check> check_figure(const LinePlan& plan, const Piece& piece) {
    const auto& last = *plan.last().allowance;
    if (plan.closing || (!last.made && plan.fit != Fit::exact)) {
        return std::nullopt;
    }
    const auto& first = *plan.first().allowance;
    const Nanometres standing_to_bearing = first.standing_mark - first.total();
    return Check{plan.first_end, other(plan.first_end),
                 room_between(plan, piece) + standing_to_bearing};
}

} // namespace libsplice
