// Why the stock cannot give a piece, and whether more of the rope would do.
#pragma once

#include "libsplice/reel/rope_problem.h"

#include <cstddef>
#include <optional>

namespace libsplice {

/// Why a piece of an item, wanted by a demand, has no place: it is longer than any reel of its rope
/// (Code::piece_longer_than_reels), or its lot is not there or does not suffice
/// (Code::rope_not_on_stock, Code::lot_cannot_hold, Code::stock_runs_out). Nothing where more of
/// the rope is all that lacks, so that it can be bought by the metre.
[[nodiscard]] std::optional<Fault> refusal_of(const ReelQuestion& question, const RopeShare& share,
                                              const RopeProblem& asked, std::size_t item,
                                              std::size_t demand);

} // namespace libsplice
