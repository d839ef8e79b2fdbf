// One choice for all lines: the cheapest set of reels in which every line has a rope that serves.
#pragma once

#include "libsplice/choose/candidates.h"
#include "libsplice/choose/choice.h"
#include "libsplice/reel/plan.h"

#include <span>
#include <vector>

namespace libsplice {

/// What ropes are bought from: rows of stock, each rope by its candidate's id. Ropes without a row
/// are bought by the metre at their own price.
struct TogetherQuestion {
    std::span<const LineChoice> lines;
    const Candidates& candidates;
    std::vector<ReelStock> stock;
};

/// Chooses among the ropes of each line that meet every need and have a price; a line that has none
/// is left out. Nothing where no line has one. Among choices that cost the same, fewer sorts.
[[nodiscard]] std::optional<Together> choose_together(const TogetherQuestion& question,
                                                      const SearchLimits& limits);

} // namespace libsplice
