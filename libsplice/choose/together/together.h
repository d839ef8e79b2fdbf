// One choice for all lines: the cheapest set of reels in which every line has a rope that serves.
#pragma once

#include "libsplice/choose/choice.h"
#include "libsplice/reel/plan.h"

#include <optional>
#include <span>
#include <vector>

namespace libsplice {

/// What ropes are bought from: rows of stock, whose ropes have the names of one_name_of(). A rope
/// without a row is bought by the metre at its own price.
struct TogetherQuestion {
    std::span<const LineChoice> lines;
    std::vector<ReelStock> stock;
    Nanometres cut_loss = 0;
};

/// Chooses among the ropes of each line that meet every need and have a price, those in `ropes`
/// and in `others`; lines of a pair get one rope. A line that has none is left out. Among choices
/// that cost the same, fewer sorts. Nothing where no line has a rope with a price. The answer is
/// the same each time if the search ends before its limits.
[[nodiscard]] std::optional<Together> choose_together(const TogetherQuestion& question,
                                                      const SearchLimits& limits);

} // namespace libsplice
