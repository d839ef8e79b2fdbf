// Adds up what can still move the finished length once the check has read right.
#include "libsplice/cut/judge/chance.h"

#include "libsplice/cut/spread.h"
#include "libsplice/mechanics/chance/spread.h"

namespace libsplice {

namespace {

/// Whether the row can still move the finished length once the check has read right: what lies
/// beyond a throat or a knot's face comes off the tail, and the first end has been measured with
/// the line. An item made whole has no check, so all of its splices still count.
bool moves_finished_length(const BoundEnds& ends, const LedgerRow& entry) {
    if (!entry.end || entry.row.item == Item::fitting || entry.row.item == Item::soft_eye) {
        return true;
    }
    const bool between_bearing_and_throat =
        entry.row.item == Item::take_up || entry.row.item == Item::cover_take_up ||
        entry.row.item == Item::setting || entry.row.item == Item::crossing ||
        entry.row.item == Item::throat_to_bearing || entry.row.item == Item::knot_to_bearing;
    return between_bearing_and_throat && (ends.closing || entry.end != ends.first_end);
}

} // namespace

std::optional<double> chance_outside_tolerance(const BoundLine& line, const Piece& piece) {
    if (!line.fit.tolerance) {
        return std::nullopt;
    }
    std::vector<LedgerRow> remaining;
    for (const LedgerRow& entry : piece.ledger) {
        if (moves_finished_length(line.ends, entry)) {
            remaining.push_back(entry);
        }
    }
    return chance_outside(from_nanometres(*line.fit.tolerance).si(), combined_spread(remaining));
}

} // namespace libsplice
