// The choice for all lines as a programme in whole numbers, as if rope could be cut without waste.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace libsplice {

/// A rope that serves a unit, which is a line or the lines of a pair, and how much of it.
struct RopeOption {
    std::size_t unit = 0;
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
    std::optional<double> per_metre; ///< nothing: it is not had by the metre
};

/// These options of one sort, taken together, cost no less than this, because more pieces of a rope
/// never cost less.
struct KnownCost {
    std::size_t sort = 0;
    std::vector<std::size_t> options;
    double cost = 0.0; ///< infinite: they cannot be had together
};

/// What is asked.
struct TogetherProgramme {
    std::size_t units = 0; ///< each has an option
    std::vector<RopeOption> options;
    std::vector<RopeSort> sorts;
    std::vector<KnownCost> known;
    std::optional<std::size_t> most_sorts;
};

/// A choice that is as cheap as the programme can say.
struct RelaxedChoice {
    std::optional<std::vector<std::size_t>> options; ///< nothing: none was found under the cost
    double bound = 0.0; ///< no choice costs less, or none less than what was searched under
};

/// Solves it for choices that cost less than `under`; each unit takes one option. Among choices
/// that cost the same, fewer sorts.
[[nodiscard]] RelaxedChoice solve(const TogetherProgramme& programme, double under,
                                  const SearchLimits& limits);

} // namespace libsplice
