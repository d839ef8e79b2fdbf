// Adds up what can still move the finished length once the check has read right.
#include "libsplice/cut/judge/chance.h"

#include "libsplice/cut/spread.h"
#include "libsplice/mechanics/chance/spread.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

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
        entry.row.item == Item::settling || entry.row.item == Item::crossing ||
        entry.row.item == Item::throat_to_bearing || entry.row.item == Item::knot_to_bearing;
    return between_bearing_and_throat && (ends.closing || entry.end != ends.first_end);
}

std::vector<LedgerRow> moving_rows(const BoundEnds& ends, const Piece& piece) {
    std::vector<LedgerRow> moving;
    for (const LedgerRow& entry : piece.ledger) {
        if (moves_finished_length(ends, entry)) {
            moving.push_back(entry);
        }
    }
    return moving;
}

bool err_together(const LedgerRow& one, const LedgerRow& another) {
    return one.row.group != Group::own && one.row.group == another.row.group;
}

/// The row with the largest spread among those that err together most; null if nothing errs.
const LedgerRow* largest_cause(const std::vector<LedgerRow>& rows) {
    const LedgerRow* largest = nullptr;
    double most = 0.0;
    for (const LedgerRow& entry : rows) {
        double together = 0.0;
        for (const LedgerRow& another : rows) {
            together += &another == &entry || err_together(another, entry) ? another.row.sd : 0.0;
        }
        const bool larger = together > most || (!(together < most) && largest != nullptr &&
                                                entry.row.sd > largest->row.sd);
        if (larger) {
            most = together;
            largest = &entry;
        }
    }
    return largest;
}

/// What takes the doubt of a row away.
std::string_view cure_of(Item item) {
    struct Cure {
        Item item{};
        std::string_view text;
    };
    constexpr std::array cures{
        Cure{Item::first_stretch,
             "load the rope before it is marked, and write prestretched = yes"},
        Cure{Item::stretch,
             "load a length of this rope, and write what it stretches as rope_stretch"},
        Cure{Item::take_up, "splice one test piece of this rope and let the tables learn from it"},
        Cure{Item::cover_take_up,
             "splice one test piece of this rope and let the tables learn from it"},
        Cure{Item::settling, "load every splice before it is measured"},
        Cure{Item::crossing, "load every splice before it is measured"},
        Cure{Item::soft_eye, "write the diameter of what the eye goes round as its pin"},
        Cure{Item::knot_to_bearing, "tie one test knot in this rope and measure it"},
        Cure{Item::finished_length, "measure with a better tape"},
        Cure{Item::fitting, "measure with a better tape"},
    };
    const auto found = std::ranges::find(cures, item, &Cure::item);
    return found == cures.end() ? "make one test piece and measure it" : found->text;
}

} // namespace

void add_chance(const BoundLine& line, Piece& piece) {
    if (!line.fit.tolerance) {
        return;
    }
    const std::vector<LedgerRow> moving = moving_rows(line.ends, piece);
    const double tolerance = from_nanometres(*line.fit.tolerance).si();
    piece.chance_outside = chance_outside(tolerance, combined_spread(moving));
    const LedgerRow* largest = largest_cause(moving);
    if (largest == nullptr) {
        return;
    }
    std::vector<LedgerRow> rest;
    for (const LedgerRow& entry : moving) {
        if (&entry != largest && !err_together(entry, *largest)) {
            rest.push_back(entry);
        }
    }
    piece.chance_cause = ChanceCause{largest->row.item, cure_of(largest->row.item),
                                     chance_outside(tolerance, combined_spread(rest))};
}

double chance_apart(const BoundLine& line, const Piece& piece, Nanometres tolerance) {
    double squares = 0.0;
    for (const LedgerRow& entry : moving_rows(line.ends, piece)) {
        if (entry.row.group == Group::own && entry.end) {
            squares += entry.row.sd * entry.row.sd;
        }
    }
    const double tape = rectangular_spread(line.states.tape.fixed.si());
    const double apart = std::sqrt(2.0 * (squares + tape * tape));
    return chance_outside(from_nanometres(tolerance).si(), apart);
}

} // namespace libsplice
