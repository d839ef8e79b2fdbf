// Which capacities pieces can fill to the last bit, and ways to do it.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <cstddef>
#include <cstdint>
#include <random>
#include <span>
#include <vector>

namespace libsplice {

/// Every sum of sizes up to a capacity, as a table of bits. One table may be made again and again:
/// it keeps its memory.
class SubsetSums {
  public:
    struct Piece {
        Amount size = 0;       ///< over 0
        std::int64_t most = 0; ///< so many may be taken; 0 or more
    };

    /// Takes in one piece after the other until the capacity can be filled to the end: with the
    /// largest first, those that are smaller than it takes are spared.
    void make(std::span<const Piece> pieces, Amount capacity);

    /// The largest sum that is not over the capacity.
    [[nodiscard]] Amount largest() const;

    /// Pieces of exactly that sum, which must be one that can be had: the earlier ones where there
    /// is a choice, but in one of eight cases the later one. By piece: how many.
    [[nodiscard]] std::vector<std::int32_t> pieces_of(Amount sum, std::minstd_rand& random) const;

    /// How many words of the table the last making took.
    [[nodiscard]] std::int64_t work() const { return work_; }

  private:
    using Word = std::uint64_t;

    /// So many of a piece, taken or not as one.
    struct Bundle {
        std::size_t piece;
        std::int32_t count;
        Amount size;
    };
    void set_bundles(std::span<const Piece> pieces);
    void add(std::size_t bundle);
    [[nodiscard]] bool can_be_had(std::size_t bundles, Amount sum) const;

    std::vector<Bundle> bundles_;
    std::vector<Word> sums_; ///< by how many bundles count: a bit for each sum
    std::size_t words_ = 0;  ///< of each such row
    std::size_t pieces_ = 0;
    std::size_t filled_ = 0; ///< words that hold all sums of the last row
    Amount capacity_ = 0;
    std::int64_t work_ = 0;
};

} // namespace libsplice
