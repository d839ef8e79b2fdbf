// All that is wanted of one rope and all that there is of it, as the optimiser's question.
#pragma once

#include "libsplice/reel/plan.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

namespace libsplice {

/// Demands and stock of one rope, by their place in the question.
struct RopeShare {
    std::vector<std::size_t> demands;
    std::vector<std::size_t> stock;
    std::vector<std::size_t> to_buy; ///< by the metre, for what the stock lacks: a row for a colour
    bool has_stock = false;          ///< whether there is any stock, of whatever rope
};

/// The optimiser's question with the way back.
struct RopeProblem {
    StockProblem problem;
    std::vector<std::size_t> stock_rows;                ///< by stock: the question's
    std::vector<std::vector<std::size_t>> item_demands; ///< by item: the question's
    std::vector<std::optional<std::size_t>> loose_rows; ///< by item: the order by the metre
    std::vector<std::size_t> items_without_lot;   ///< whose lot cannot be had: no stock is allowed
    std::vector<std::vector<std::size_t>> groups; ///< items that must come from one lot, by group
};

/// By group: how many of the lots that could hold it are passed over. Groups beyond its end take
/// the first.
using LotChoice = std::vector<std::size_t>;

/// Stock rows that are left out, because their minimum order is not worth it.
using LeftOut = std::vector<bool>;

/// Builds the question. With `keep_lots` the pieces of a pair, or of a lot that no row states, are
/// given stock of one lot, as `choice` says; without, they may come from any stock that they may
/// come from singly, which no plan can be cheaper than. A group that passes over every lot that
/// could hold it is without one.
[[nodiscard]] RopeProblem rope_problem(const ReelQuestion& question, const RopeShare& share,
                                       const LeftOut& left_out,
                                       const std::optional<LotChoice>& choice);

/// What a row costs in each goal of the question's objective.
[[nodiscard]] Goals goals_of(const ReelQuestion& question, const ReelStock& row, Nanometres length);
/// What a length of it is paid for.
[[nodiscard]] Money money_of(const ReelStock& row, Nanometres length);

/// Whether every row of the stock that the rope may come from has a price.
[[nodiscard]] bool is_priced(const ReelQuestion& question, const RopeShare& share);

/// Whether a demand's colour and lot allow a row, where the lot is one that some row states.
[[nodiscard]] bool suits(const ReelStock& row, const Demand& demand, bool lot_is_stated);

} // namespace libsplice
