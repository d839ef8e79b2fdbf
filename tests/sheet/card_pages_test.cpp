// Which cards share a page: few pages stay half empty, and nothing is left out.
#include "libsplice/sheet/html/card_pages.h"
#include "libsplice/sheet/html/text_width.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <numeric>
#include <span>
#include <vector>

namespace libsplice::testing {
namespace {

using Parts = std::vector<CardPart>;
using Order = std::vector<std::size_t>;

TEST(CardPages, ColumnsAreAsEvenAsTheOrderAllows) {
    const std::array blocks{30.0, 30.0, 30.0, 80.0};
    EXPECT_EQ(even_columns(blocks), 3U); // 90 beside 80
    EXPECT_EQ(height_of_columns(blocks, {3, 1}), 90.0);
    EXPECT_EQ(height_of_columns(blocks, {1, 3}), 140.0);
    EXPECT_EQ(even_columns(std::span(blocks).first(0)), 0U);
}

TEST(CardPages, ACardThatFitsIsOnePart) {
    const std::array blocks{100.0, 100.0, 100.0, 100.0};
    EXPECT_EQ(parts_of_card(blocks, 35.0, 15.0), (Parts{{2, 2}}));
}

TEST(CardPages, ACardThatDoesNotFitFillsAPageColumnByColumn) {
    const std::array blocks{100.0, 100.0, 100.0, 100.0, 50.0, 50.0};
    // 35 + 200 fits 262, 35 + 250 does not; the rest lies in two even columns.
    EXPECT_EQ(parts_of_card(blocks, 35.0, 15.0), (Parts{{2, 2}, {1, 1}}));
}

TEST(CardPages, ABlockLargerThanAPageIsNotLost) {
    const std::array blocks{20.0, 300.0, 20.0};
    std::size_t placed = 0;
    for (const CardPart& part : parts_of_card(blocks, 35.0, 15.0)) {
        placed += part.left + part.right;
    }
    EXPECT_EQ(placed, 3U);
}

TEST(TextWidth, IsThatOfThePublishedMetrics) {
    // Helvetica's widths as Adobe published them: s 500, p 556, l 222, i 222, c 500, e 556.
    EXPECT_NEAR(text_width("splice", {1000.0}), 2556.0 * 25.4 / 72.0, 1e-6);
    EXPECT_NEAR(text_width("splice", {1000.0, true}), 2835.0 * 25.4 / 72.0, 1e-6);
}

TEST(TextWidth, ALineIsBrokenBetweenWordsAndInLongOnes) {
    const double word = text_width("splice", {10.0});
    EXPECT_EQ(lines_of("", word, {10.0}), 1.0);
    EXPECT_EQ(lines_of("splice splice", 2.5 * word, {10.0}), 1.0);
    EXPECT_EQ(lines_of("splice splice splice", 2.5 * word, {10.0}), 2.0);
    EXPECT_EQ(lines_of("splicesplicesplice", 1.1 * word, {10.0}), 3.0);
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
    EXPECT_EQ(order_of_cards(heights), (Order{0, 2, 1, 3}));
}

} // namespace
} // namespace libsplice::testing
