// Sums of pieces against every choice there is.
#include "libsplice/reel/solver/fit/subset_sums.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace libsplice::testing {

namespace {

std::set<Amount> sums_by_trying(std::span<const SubsetSums::Piece> pieces) {
    std::set<Amount> sums{0};
    for (const SubsetSums::Piece& piece : pieces) {
        std::set<Amount> more;
        for (const Amount sum : sums) {
            for (std::int64_t k = 0; k <= piece.most; ++k) {
                more.insert(sum + k * piece.size);
            }
        }
        sums = std::move(more);
    }
    return sums;
}

class SubsetSumsTrial : public ::testing::TestWithParam<std::uint32_t> {};

TEST_P(SubsetSumsTrial, TheLargestSumUpToTheCapacityIsFoundWithItsPieces) {
    std::minstd_rand random(GetParam());
    std::vector<SubsetSums::Piece> pieces;
    for (std::size_t i = 0; i < random() % 7; ++i) {
        pieces.push_back(
            {static_cast<Amount>(1 + random() % 90), static_cast<std::int64_t>(random() % 6)});
    }
    const std::set<Amount> sums = sums_by_trying(pieces);
    SubsetSums table;
    for (const Amount capacity : {0, 1, 63, 64, 65, 127, 128, 200, 777}) {
        table.make(pieces, capacity);
        const Amount largest = table.largest();
        EXPECT_EQ(largest, *std::prev(sums.upper_bound(capacity)));
        const auto counts = table.pieces_of(largest, random);
        ASSERT_EQ(counts.size(), pieces.size());
        Amount sum = 0;
        for (std::size_t i = 0; i < counts.size(); ++i) {
            EXPECT_GE(counts[i], 0);
            EXPECT_LE(counts[i], pieces[i].most);
            sum += counts[i] * pieces[i].size;
        }
        EXPECT_EQ(sum, largest);
    }
}

INSTANTIATE_TEST_SUITE_P(Many, SubsetSumsTrial, ::testing::Range(1U, 200U));

// 60 + 40 fills 100 as 50 + 30 + 20 does; the small ones are spared.
TEST(SubsetSums, SmallerPiecesAreSparedWhereLargerOnesFillTheCapacity) {
    const std::vector<SubsetSums::Piece> pieces{{60, 1}, {50, 1}, {40, 1}, {30, 1}, {20, 1}};
    std::minstd_rand random;
    SubsetSums table;
    for (int i = 0; i < 50; ++i) {
        table.make(pieces, 100);
        EXPECT_EQ(table.pieces_of(100, random), (std::vector<std::int32_t>{1, 0, 1, 0, 0}));
    }
}

} // namespace

} // namespace libsplice::testing
