// The choice for all lines as a programme in whole numbers, as if rope could be cut without waste.
#pragma once

#include "libsplice/reel/solver/patterns/master.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace libsplice {

/// A rope that serves a line, and how much of it.
struct RopeOption {
    std::size_t line = 0;
    std::size_t tried = 0; ///< of the line's ropes
    std::size_t sort = 0;
    double metres = 0.0; ///< of all its pieces
};

/// Reels of one sort that can be had, all of one length.
struct SortReel {
    double metres = 0.0;
    double price = 0.0;
    std::optional<std::int64_t> count; ///< nothing: as many as are wanted
};

/// One sort of rope: what it can be had from.
struct RopeSort {
    std::vector<SortReel> reels;
    double per_metre = 0.0; ///< by the metre
};

/// These options of one sort, taken together, cost no less than this.
struct KnownCost {
    std::size_t sort = 0;
    std::vector<std::size_t> options;
    double cost = 0.0;
};

/// What is asked.
struct TogetherProgramme {
    std::size_t lines = 0;
    std::vector<RopeOption> options;
    std::vector<RopeSort> sorts;
    std::vector<KnownCost> known;
};

/// A choice that is as cheap as the programme can say.
struct RelaxedChoice {
    std::optional<std::vector<std::size_t>> options; ///< nothing: none was found under the cost
    double bound = 0.0;                              ///< no choice costs less
};

/// Solves it for choices that cost less than `under`; each line that has an option takes one.
/// Among choices that cost the same, fewer sorts.
[[nodiscard]] RelaxedChoice solve(const TogetherProgramme& programme, double under,
                                  const SearchLimits& limits);

} // namespace libsplice
