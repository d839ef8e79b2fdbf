// First-fit decreasing: the longest piece that still goes in, stock by stock.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstdint>
#include <vector>

namespace libsplice {

/// Pieces that are still wanted, and stock that is still there.
struct Remaining {
    std::vector<std::int64_t> items;
    std::vector<std::int64_t> stocks;
};

/// All pieces and all stock of a problem.
[[nodiscard]] Remaining everything(const StockProblem& problem);

/// How the next stock is chosen.
enum class FirstFitRule : std::uint8_t {
    least_per_length, ///< the cheapest by its length
    least_per_piece,  ///< the cheapest by the length of the pieces that go in
};

/// Cuts what remains. What fits nowhere is had loose, or else is unplaced.
[[nodiscard]] StockPlan first_fit(const StockProblem& problem, Remaining remaining,
                                  FirstFitRule rule);

} // namespace libsplice
