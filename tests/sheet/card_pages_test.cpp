// Which cards share a page: few pages stay half empty, and nothing is left out.
#include "libsplice/sheet/html/card_pages.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <numeric>
#include <vector>

namespace libsplice {
namespace {

using Parts = std::vector<std::size_t>;

TEST(CardPages, ACardThatFitsIsOnePart) {
    const std::array blocks{100.0, 100.0};
    EXPECT_EQ(parts_of_card(blocks, 30.0, 10.0, 5.0), Parts{2});
}

TEST(CardPages, ACardThatDoesNotFitIsBrokenBetweenItsBlocks) {
    const std::array blocks{100.0, 100.0, 100.0, 100.0};
    // 30 + 5 + 2 x 100 fits 262, a third block does not; of the rest 10 + 5 + 2 x 100 does.
    EXPECT_EQ(parts_of_card(blocks, 30.0, 10.0, 5.0), (Parts{2, 2}));
}

TEST(CardPages, ABlockLargerThanAPageHasAPartOfItsOwn) {
    const std::array blocks{300.0, 20.0};
    EXPECT_EQ(parts_of_card(blocks, 30.0, 10.0, 5.0), (Parts{1, 1}));
}

TEST(CardPages, EveryCardIsPrintedOnce) {
    std::vector<double> heights(100);
    std::iota(heights.begin(), heights.end(), 70.0);
    auto order = order_of_cards(heights);
    std::ranges::sort(order);
    std::vector<std::size_t> all(100);
    std::iota(all.begin(), all.end(), 0U);
    EXPECT_EQ(order, all);
}

TEST(CardPages, ALaterCardFillsThePageOfAnEarlierOne) {
    const std::array heights{150.0, 200.0, 100.0, 60.0};
    EXPECT_EQ(order_of_cards(heights), (Parts{0, 2, 1, 3}));
}

} // namespace
} // namespace libsplice
