// The safe bound against numbers worked by hand, and against the best there is.
#include "libsplice/reel/solver/patterns/safe_bound.h"

#include "tests/reel/brute_force.h"

#include <gtest/gtest.h>

#include <random>

namespace libsplice::testing {

namespace {

// A stock of 10 that costs 1; 7 items of 3, 3 to a stock: at a price of 1/3 each the best filling
// is worth 1, and 7/3 rounds up to 3.
TEST(SafeBound, PricesThatNothingBeatsCountInFull) {
    const std::vector<Amount> prices{1};
    const std::vector<std::int64_t> counts{7};
    const std::vector<StockReach> stocks{{.each = 1, .best = 3}};
    EXPECT_EQ(safe_bound({prices, counts, 3}, stocks, 1), 3);
}

// The same at a price of 1/2: a filling is worth 3/2, so all prices shrink by 2/3 and 7/3 remains.
TEST(SafeBound, PricesThatAreBeatenAreScaledDown) {
    const std::vector<Amount> prices{1};
    const std::vector<std::int64_t> counts{7};
    const std::vector<StockReach> stocks{{.each = 1, .best = 3}};
    EXPECT_EQ(safe_bound({prices, counts, 2}, stocks, 1), 3);
}

// 65 items, one to a stock, each priced at 1 and a millionth, as rounding might: the linear
// programme would say 65.000065, and 66 is wrong.
TEST(SafeBound, APriceAHairTooHighDoesNotRaiseTheBound) {
    const std::vector<Amount> prices{1'000'001};
    const std::vector<std::int64_t> counts{65};
    const std::vector<StockReach> stocks{{.each = 1, .best = 1'000'001}};
    EXPECT_EQ(safe_bound({prices, counts, 1'000'000}, stocks, 1), 65);
}

// 2 free offcuts that hold 1 each, then new stock at 5 that holds 1: of 6 items 4 are paid for.
TEST(SafeBound, AStockWithALimitIsChargedForWhatItBringsTooMuch) {
    const std::vector<Amount> prices{5};
    const std::vector<std::int64_t> counts{6};
    const std::vector<StockReach> stocks{{.each = 0, .best = 5, .available = 2},
                                         {.each = 5, .best = 5}};
    EXPECT_EQ(safe_bound({prices, counts, 1}, stocks, 1), 20);
}

// The same where 1 of a stock that costs 7 and holds 1 must be used: 7 and three times 5.
TEST(SafeBound, AStockThatMustBeUsedIsPaidFor) {
    const std::vector<Amount> prices{5};
    const std::vector<std::int64_t> counts{6};
    const std::vector<StockReach> stocks{{.each = 0, .best = 5, .available = 2},
                                         {.each = 7, .best = 5, .least = 1},
                                         {.each = 5, .best = 5}};
    EXPECT_EQ(safe_bound({prices, counts, 1}, stocks, 1), 22);
}

TEST(SafeBound, ItIsRoundedUpToAMultipleOfTheStep) {
    const std::vector<Amount> prices{1};
    const std::vector<std::int64_t> counts{21};
    const std::vector<StockReach> stocks{{.each = 100, .best = 100}};
    EXPECT_EQ(safe_bound({prices, counts, 1}, stocks, 25), 25);
}

class BoundTrial : public ::testing::TestWithParam<std::uint32_t> {};

// Any prices at all give a bound that the best plan keeps to.
TEST_P(BoundTrial, NoPricesGiveABoundOverTheBest) {
    std::minstd_rand random(GetParam());
    StockProblem problem;
    problem.cut_loss = static_cast<Nanometres>(random() % 3);
    problem.stocks.push_back({.length = 20, .each = {static_cast<Amount>(3 + random() % 4)}});
    problem.stocks.push_back(
        {.length = 13, .available = 2, .each = {static_cast<Amount>(random() % 4)}});
    std::vector<Amount> prices;
    std::vector<std::int64_t> counts;
    for (int i = 0; i < 3; ++i) {
        problem.items.push_back({static_cast<Nanometres>(3 + random() % 15), 1 + i % 2, {}, {}});
        prices.push_back(static_cast<Amount>(random() % 100'000));
        counts.push_back(problem.items.back().count);
    }
    const auto best = best_goals(problem);
    ASSERT_TRUE(best);
    std::vector<StockReach> reaches;
    for (const Stock& stock : problem.stocks) {
        Amount most = 0;
        for (std::int64_t a = 0; a <= counts[0]; ++a) {
            for (std::int64_t b = 0; b <= counts[1]; ++b) {
                for (std::int64_t c = 0; c <= counts[2]; ++c) {
                    const Nanometres rope = a * problem.items[0].length +
                                            b * problem.items[1].length +
                                            c * problem.items[2].length;
                    if (rope + std::max<std::int64_t>(0, a + b + c - 1) * problem.cut_loss <=
                        stock.length) {
                        most = std::max(most, a * prices[0] + b * prices[1] + c * prices[2]);
                    }
                }
            }
        }
        reaches.push_back({stock.each[0], most, stock.available, 0, true});
    }
    EXPECT_LE(safe_bound({prices, counts, 10'000}, reaches, 1), (*best)[0]);
}

INSTANTIATE_TEST_SUITE_P(Many, BoundTrial, ::testing::Range(1U, 300U));

} // namespace

} // namespace libsplice::testing
