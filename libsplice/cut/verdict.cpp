#include "libsplice/cut/verdict.h"

#include "libsplice/cut/layout.h"
#include "libsplice/cut/spread.h"
#include "libsplice/mechanics/chance/spread.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

/// Whether the row can still move the finished length once the check has read right: what lies
/// beyond a throat or a knot's face comes off the tail, and the first end has been measured with
/// the line. An item made whole has no check, so all of its splices still count.
bool moves_finished_length(const LinePlan& plan, const LedgerRow& entry) {
    if (!entry.end || entry.row.item == Item::fitting || entry.row.item == Item::soft_eye) {
        return true;
    }
    const bool between_bearing_and_throat =
        entry.row.item == Item::take_up || entry.row.item == Item::cover_take_up ||
        entry.row.item == Item::setting || entry.row.item == Item::crossing ||
        entry.row.item == Item::throat_to_bearing || entry.row.item == Item::knot_to_bearing;
    return between_bearing_and_throat && (plan.closing || entry.end != plan.first_end);
}

} // namespace

std::optional<Fault> check_room(const LinePlan& plan, const Piece& piece, Nanometres finished) {
    const Nanometres room = room_between(plan, piece);
    const Nanometres needed =
        plan.first().allowance->bury_reach + plan.last().allowance->bury_reach;
    if (room > 0 && room >= needed) {
        return std::nullopt;
    }
    // Rope between the throats grows with the finished length at the rate of stretch and
    // first_stretch.
    const double rate = plan.first().allowance->laid * (1.0 + plan.marking_strain) /
                        (1.0 + plan.working_strain) /
                        (1.0 + (plan.first_stretch ? plan.first_stretch->share : 0.0)) /
                        (1.0 + (plan.slack ? plan.slack->share : 0.0));
    const Nanometres millimetre = nanometres_per_metre / 1000;
    const double short_by = static_cast<double>(std::max<Nanometres>(needed, 1) - room);
    const Nanometres lacking = std::llround(std::ceil(short_by / rate));
    const Nanometres least = (finished + lacking + millimetre) / millimetre * millimetre;
    if (needed == 0) {
        return Fault{Code::nothing_left,
                     "nothing is left between the ends of a line of " +
                         show_length(finished, UnitSystem::metric) +
                         "; fittings and ends need at least " +
                         show_length(least, UnitSystem::metric),
                     {},
                     "length"};
    }
    return Fault{Code::buries_overlap,
                 "the buries need " + show_length(needed, UnitSystem::metric) +
                     " between the throats and there are " +
                     show_length(std::max<Nanometres>(room, 0), UnitSystem::metric) +
                     "; with these ends the line must be " +
                     show_length(least, UnitSystem::metric) +
                     " or longer. Else make an endless loop seized to length, shorten "
                     "the tails to the published minimum and lock-stitch them, or use thinner rope",
                 {},
                 "length"};
}

std::optional<double> chance_outside_tolerance(const LinePlan& plan, const Piece& piece) {
    if (!plan.tolerance) {
        return std::nullopt;
    }
    std::vector<LedgerRow> remaining;
    for (const LedgerRow& entry : piece.ledger) {
        if (moves_finished_length(plan, entry)) {
            remaining.push_back(entry);
        }
    }
    return chance_outside(from_nanometres(*plan.tolerance).si(), combined_spread(remaining));
}

void find_strength(const LinePlan& plan, Piece& piece) {
    piece.retained.reset();
    piece.weaker.reset();
    piece.design_factor.reset();
    for (const LineEnd end : both_ends) {
        const auto& retained = plan.end(end).allowance->retained;
        if (retained && (!piece.retained || retained->share < piece.retained->share)) {
            piece.retained = retained;
            piece.weaker = end;
        }
    }
    if (plan.load && plan.rope->breaking && plan.load->si() > 0.0) {
        const double share = piece.retained ? piece.retained->share : 1.0;
        piece.design_factor = share * (plan.rope->breaking->value / *plan.load);
    }
}

} // namespace libsplice
