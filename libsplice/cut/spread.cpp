// Combines the spreads of the rows of a ledger.
#include "libsplice/cut/spread.h"

#include <array>
#include <cmath>

namespace libsplice {

double combined_spread(std::span<const LedgerRow> rows) {
    constexpr std::size_t group_count = static_cast<std::size_t>(Group::cut) + 1;
    std::array<double, group_count> together{};
    double squares = 0.0;
    for (const LedgerRow& entry : rows) {
        if (entry.row.group == Group::own) {
            squares += entry.row.sd * entry.row.sd;
        } else {
            together[static_cast<std::size_t>(entry.row.group)] += entry.row.sd;
        }
    }
    for (const double sd : together) {
        squares += sd * sd;
    }
    return std::sqrt(squares);
}

} // namespace libsplice
