// The spread of a whole ledger: rows that err together add up, the groups combine as squares.
#pragma once

#include "libsplice/cut/piece.h"

#include <span>

namespace libsplice {

/// Standard deviation of the sum of the rows, in metres.
[[nodiscard]] double combined_spread(std::span<const LedgerRow> rows);

} // namespace libsplice
