// How many of each stock to use: whole numbers near those of the linear programme.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstdint>
#include <random>
#include <span>
#include <vector>

namespace libsplice {

/// Which of several draws is taken.
enum class DrawRule : std::uint8_t {
    cheapest, ///< least to spare
    dearest,  ///< most room, still under the cost that is to be beaten
};

/// What is drawn from.
struct StockDraw {
    std::span<const double> about; ///< by stock: how many the linear programme uses
    Amount under = 0;              ///< the cost in the first goal is lower than this
    DrawRule rule = DrawRule::cheapest;
};

/// Numbers of each stock that together are long enough for all pieces that are not had loose:
/// those that are given, rounded, a few of them changed, and two set so that the cost is what the
/// rule asks for. Empty if no draw costs less than it must.
[[nodiscard]] std::vector<std::int64_t>
draw_stock_numbers(const StockProblem& problem, const StockDraw& draw, std::minstd_rand& random);

/// About as many of each stock as are given, in whole numbers that cost less than `under` in the
/// first goal and are long enough for all pieces: of several draws the dearest, which leaves most
/// room. Empty if no draw costs less than it must.
[[nodiscard]] std::vector<std::int64_t> draw_under(const StockProblem& problem,
                                                   std::span<const double> about, Amount under,
                                                   std::minstd_rand& random);

/// How many of each stock a plan uses.
[[nodiscard]] std::vector<double> stocks_of(const StockProblem& problem, const StockPlan& plan);

} // namespace libsplice
