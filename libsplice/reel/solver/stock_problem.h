// The optimiser's question and answer: which stock each of many like items is cut from.
#pragma once

#include "libsplice/units/quantity.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

namespace libsplice {

/// What is to be made small: money, waste or a count of reels, in whole units of its own.
using Amount = std::int64_t;

/// Goals are met one after the other: a later one only chooses among plans that are equal in all
/// earlier ones.
inline constexpr std::size_t most_goals = 3;
using Goals = std::array<Amount, most_goals>;

inline constexpr std::int64_t no_limit = std::numeric_limits<std::int32_t>::max();

/// Pieces of one length.
struct StockItem {
    Nanometres length = 0;  ///< over 0
    std::int64_t count = 0; ///< 1 or more
    /// What one costs in each goal if it is had in its own length; nothing if it cannot be.
    std::optional<Goals> loose = {};
    /// By stock: whether it may be cut from it; empty: from all.
    std::vector<bool> allowed = {};

    [[nodiscard]] bool may_come_from(std::size_t stock) const {
        return allowed.empty() || allowed[stock];
    }
};

/// Stock of one length.
struct Stock {
    Nanometres length = 0;                ///< over 0
    std::int64_t available = no_limit;    ///< how many there are
    Goals each{};                         ///< what one that is cut into costs in each goal
    std::array<bool, most_goals> waste{}; ///< whether its waste, in nanometres, is added to a goal
    Nanometres usable = 0;                ///< a remainder from this length on is no waste; over 0
};

/// CutLoss falls between two pieces, and between the last piece and what is left: a stock that is
/// used to its end needs none after the last.
struct StockProblem {
    std::vector<StockItem> items;
    std::vector<Stock> stocks;
    Nanometres cut_loss = 0;
    std::size_t goals = 1; ///< how many count, from the first
};

/// Pieces of one item in a pattern.
struct Take {
    std::uint32_t item = 0;
    std::int32_t count = 0;
    friend bool operator==(const Take&, const Take&) = default;
};

/// A way to cut a stock, and how many are cut so.
struct Pattern {
    std::size_t stock = 0;
    std::vector<Take> takes; ///< by item
    std::int64_t times = 0;
};

struct StockPlan {
    std::vector<Pattern> patterns;
    std::vector<std::int64_t> loose;    ///< by item: had in its own length
    std::vector<std::int64_t> unplaced; ///< by item: for which there is no stock
    Goals value{};                      ///< of what is placed
    Amount bound = 0;    ///< no plan that places as much is under this in the first goal
    bool proved = false; ///< the first goal's value meets the bound, and no more can be placed

    [[nodiscard]] bool places_all() const {
        return std::all_of(unplaced.begin(), unplaced.end(),
                           [](std::int64_t count) { return count == 0; });
    }
};

/// How far a search has come.
struct SearchProgress {
    Amount bound = 0;
    Amount value = 0;
};

/// When to stop, and whom to tell. All may be left out.
struct SearchLimits {
    std::optional<std::chrono::steady_clock::time_point> deadline = {};
    const std::atomic<bool>* stop = nullptr; ///< set from outside to end at once
    std::function<void(const SearchProgress&)> on_progress = {};

    [[nodiscard]] bool reached() const {
        return (stop != nullptr && stop->load(std::memory_order_relaxed)) ||
               (deadline && std::chrono::steady_clock::now() >= *deadline);
    }
};

/// What is left of a stock after its pieces, the cut behind the last one taken off.
[[nodiscard]] Nanometres left_of(const StockProblem& problem, const Pattern& pattern);
/// What cuts have cost.
[[nodiscard]] Nanometres cut_loss_of(const StockProblem& problem, const Pattern& pattern);
/// What one stock cut so costs in each goal.
[[nodiscard]] Goals price_of(const StockProblem& problem, const Pattern& pattern);
/// What a plan costs in each goal.
[[nodiscard]] Goals price_of(const StockProblem& problem, const StockPlan& plan);

/// Solves the problem: as much rope placed as can be, then the goals in order. Given the same
/// problem it gives the same plan if it ends before a limit.
[[nodiscard]] StockPlan solve(const StockProblem& problem, const SearchLimits& limits);

} // namespace libsplice
