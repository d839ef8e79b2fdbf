// The units in which one goal is worked out: its steps, its scale, and its size against others.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>

namespace libsplice {

struct GoalUnits {
    std::size_t goal = 0;   ///< the one that is made small; those before it must not get worse
    Goals highest{1, 1, 1}; ///< by goal up to this one: what the dearest stock or piece costs
    Amount step = 1;        ///< every price in the goal is a multiple of it
    Amount scale = 1;       ///< whole prices of items are in units of 1/scale
    /// Whether more pieces than are wanted would change a goal up to this one, because waste
    /// counts.
    bool counts_waste = false;

    /// An amount of a goal as the linear programme has it: about 1.
    [[nodiscard]] double scaled(Amount amount, std::size_t of) const {
        return static_cast<double>(amount) / static_cast<double>(highest[of]);
    }
    [[nodiscard]] double scaled(Amount amount) const { return scaled(amount, goal); }
    /// A cost of 1 in the linear programme, as a whole price.
    [[nodiscard]] Amount whole() const { return highest[goal] * scale; }
};

/// The units of a goal; `size_unit` divides every length with the cut behind it.
[[nodiscard]] GoalUnits units_of(const StockProblem& problem, std::size_t goal, Amount size_unit);

} // namespace libsplice
