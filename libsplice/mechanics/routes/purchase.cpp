// Adds up parts, turns round sheaves, lead and tail.
#include "libsplice/mechanics/routes/purchase.h"

#include <gsl/assert>

#include <algorithm>
#include <numbers>

namespace libsplice {

namespace {

std::optional<WayFault> fault_of(const Purchase& purchase, Length diameter) {
    if (purchase.parts < 1) {
        return WayFault{WayError::too_few, purchase.parts};
    }
    const Length hauled = purchase.hauled.value_or(purchase.run);
    if (hauled > purchase.run) {
        return WayFault{WayError::hauled_past_run, 0, purchase.run, hauled};
    }
    const auto& sheaves = purchase.sheaves;
    const auto largest = std::ranges::max_element(sheaves, {}, &RigSheave::diameter);
    if (largest != sheaves.end()) {
        const auto which = static_cast<std::size_t>(largest - sheaves.begin());
        const Length nearest = largest->diameter + diameter;
        if (purchase.run + as_good_as_nothing < nearest) {
            return WayFault{WayError::blocks_meet_eased, which, nearest, purchase.run};
        }
        if (hauled + as_good_as_nothing < nearest) {
            return WayFault{WayError::blocks_meet_hauled, which, nearest, hauled};
        }
    }
    if (purchase.becket > purchase.run) {
        return WayFault{WayError::becket_past_block, 0, purchase.run, purchase.becket};
    }
    return std::nullopt;
}

} // namespace

Purchase plain_purchase(std::size_t parts, Length run, Length sheave, Length tail) {
    Purchase purchase;
    purchase.parts = parts;
    purchase.run = run;
    purchase.tail = tail;
    if (parts > 1) {
        purchase.sheaves.assign(parts - 1, {sheave, Angle(std::numbers::pi)});
    }
    return purchase;
}

OrWayFault<PurchaseLength> purchase_length(const Purchase& purchase, Length diameter) {
    Expects(diameter.si() >= 0.0 && purchase.becket.si() >= 0.0);
    if (const auto fault = fault_of(purchase, diameter)) {
        return *fault;
    }
    const auto parts = static_cast<double>(purchase.parts);
    PurchaseLength length;
    length.way.straight = parts * purchase.run - purchase.becket + purchase.lead + purchase.tail;
    for (const RigSheave& sheave : purchase.sheaves) {
        length.way.wrapped += (sheave.diameter + diameter) / 2.0 * sheave.turn.si();
        ++length.way.turns;
    }
    const Length travel = purchase.run - purchase.hauled.value_or(purchase.run);
    length.tail_eased = purchase.tail;
    length.tail_hauled = purchase.tail + parts * travel;
    return length;
}

} // namespace libsplice
