// A plan on its way: what has been fixed, what it has cost, and what remains.
#pragma once

#include "libsplice/reel/solver/first_fit.h"
#include "libsplice/reel/solver/patterns/column_pool.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace libsplice {

class PartPlan {
  public:
    /// Nothing fixed, with so many of each stock. The problem outlives this.
    PartPlan(const StockProblem& problem, std::vector<std::int64_t> stocks);

    [[nodiscard]] const Remaining& remaining() const { return remaining_; }
    [[nodiscard]] std::int64_t pieces_left() const;
    [[nodiscard]] const Goals& spent() const { return spent_; }
    /// Whether a pattern has been cut.
    [[nodiscard]] bool started() const { return !plan_.patterns.empty(); }

    /// Cuts a pattern so many times, or as often as there is stock for it, without the pieces that
    /// are not wanted any more; false if none of its pieces is.
    bool cut(const Column& column, std::int64_t times);
    /// Has so many pieces loose, or as many as are wanted; how many.
    std::int64_t take_loose(std::size_t item, std::int64_t count);

    /// What remains is cut first-fit; nothing where a piece is left over.
    [[nodiscard]] std::optional<StockPlan> finished() const;

  private:
    void spend(const Goals& price, std::int64_t times);

    const StockProblem& problem_;
    Remaining remaining_;
    StockPlan plan_;
    Goals spent_{};
};

} // namespace libsplice
