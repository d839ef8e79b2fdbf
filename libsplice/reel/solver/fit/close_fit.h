// Close fit: one stock after another is filled as full as it will go, its longest piece first.
#pragma once

#include "libsplice/reel/solver/first_fit.h"
#include "libsplice/reel/solver/fit/subset_sums.h"
#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <random>
#include <vector>

namespace libsplice {

/// Long pieces go early, while there is much to fit beside them; short ones are left for the end,
/// where they still fit anything. The last few stocks are filled in many ways, until all pieces are
/// placed. What is chosen by lot comes from the generator it is given, so that turns differ.
class CloseFit {
  public:
    CloseFit(const StockProblem& problem, const SearchLimits& limits);

    /// A plan that cuts all pieces from no more than these numbers of each stock; nothing where
    /// this turn finds none. No piece is had loose.
    [[nodiscard]] std::optional<StockPlan> turn(const std::vector<std::int64_t>& stocks,
                                                std::minstd_rand& random);

    /// A measure of all turns so far: words of tables, a few thousand millions in a second.
    [[nodiscard]] std::int64_t work() const { return work_; }

  private:
    /// A stock that has been filled.
    struct Cut {
        Pattern pattern;
        Amount waste = 0;   ///< capacity that is not used, of all
        int tries_left = 0; ///< how often another one may be tried in its place
    };

    void start(const std::vector<std::int64_t>& stocks);
    [[nodiscard]] int tries() const;
    [[nodiscard]] std::optional<std::size_t> next_piece(std::minstd_rand& random) const;
    bool cut_one(std::minstd_rand& random);
    [[nodiscard]] bool holds(std::size_t stock, std::size_t item) const;
    [[nodiscard]] Pattern fill(std::size_t stock, std::size_t piece, std::minstd_rand& random);
    [[nodiscard]] Amount waste_of(const Pattern& pattern) const;
    void place(const Pattern& pattern, std::int64_t sign);
    [[nodiscard]] StockPlan plan() const;

    const StockProblem& problem_;
    const SearchLimits& limits_;
    std::vector<std::size_t> order_;       ///< items, the longest first
    std::vector<std::size_t> stock_order_; ///< stocks, the shortest first
    std::vector<Amount> sizes_;      ///< by item, with the cut behind it, rounded up to a unit
    std::vector<Amount> capacities_; ///< by stock, rounded down
    Remaining rest_;                 ///< what is still to be cut, and stock that may still be used
    std::int64_t pieces_left_ = 0;
    std::int64_t stocks_left_ = 0;
    Amount spare_ = 0;      ///< capacity left beyond what the pieces left take
    bool by_stock_ = false; ///< whether the next piece is one that a drawn stock holds
    std::vector<Cut> cuts_;
    std::vector<SubsetSums::Piece> offered_;
    SubsetSums sums_;
    std::int64_t work_ = 0;
};

} // namespace libsplice
