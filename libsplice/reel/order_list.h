// What to order, row by row, for the cuts of a plan.
#pragma once

#include "libsplice/reel/plan.h"

#include <cstddef>
#include <span>
#include <vector>

namespace libsplice {

/// Cuts without pieces that fill the orders of these rows up to their minimum.
[[nodiscard]] std::vector<ReelCut> minimum_orders(const ReelQuestion& question,
                                                  std::span<const std::size_t> rows,
                                                  std::span<const ReelCut> cuts);

/// One line a row of the stock that is ordered, in the order of the rows: so many reels, or one
/// length by the metre.
[[nodiscard]] std::vector<OrderLine> order_list(const ReelQuestion& question,
                                                std::span<const ReelCut> cuts);

/// What is left of a row's length, by its usable length.
[[nodiscard]] LeftIs left_is(const ReelStock& row, Nanometres left);

} // namespace libsplice
