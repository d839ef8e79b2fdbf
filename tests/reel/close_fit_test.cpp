// Close fitting against plans that are known from how their pieces were made.
#include "libsplice/reel/solver/fit/close_fit.h"
#include "libsplice/reel/solver/fit/stock_numbers.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <random>
#include <vector>

namespace libsplice::testing {

namespace {

/// Stock that was cut up into pieces without any waste, at a price of its length. Without cut_loss
/// nothing costs less than that stock, however much there is; with cut_loss there is no more of it,
/// and so all is needed.
struct Planted {
    StockProblem problem;
    std::vector<std::int64_t> stocks;
};

Planted plant(std::uint32_t seed, int reels) {
    std::minstd_rand random(seed);
    Planted made;
    made.problem.cut_loss = seed % 2 == 0 ? 0 : static_cast<Nanometres>(1 + random() % 4);
    const std::vector<Nanometres> lengths{1'000, 700, 450};
    for (const Nanometres length : lengths) {
        made.problem.stocks.push_back({.length = length, .each = {length}, .usable = 1});
    }
    made.stocks.assign(lengths.size(), 0);
    for (int i = 0; i < reels; ++i) {
        const std::size_t stock = random() % lengths.size();
        ++made.stocks[stock];
        Nanometres rest = lengths[stock];
        for (int cuts = 1 + static_cast<int>(random() % 4); cuts > 0 && rest > 250; --cuts) {
            const auto piece = static_cast<Nanometres>(40 + random() % 150);
            made.problem.items.push_back({piece, 1, {}, {}});
            rest -= piece + made.problem.cut_loss;
        }
        made.problem.items.push_back({rest, 1, {}, {}});
    }
    for (std::size_t s = 0; s < lengths.size() && made.problem.cut_loss > 0; ++s) {
        made.problem.stocks[s].available = made.stocks[s];
    }
    return made;
}

std::vector<std::int64_t> cut(const StockProblem& problem, const StockPlan& plan) {
    std::vector<std::int64_t> items(problem.items.size(), 0);
    for (const Pattern& pattern : plan.patterns) {
        for (const Take& take : pattern.takes) {
            items[take.item] += take.count * pattern.times;
        }
    }
    return items;
}

std::vector<std::int64_t> wanted(const StockProblem& problem) {
    std::vector<std::int64_t> items;
    for (const StockItem& item : problem.items) {
        items.push_back(item.count);
    }
    return items;
}

std::vector<std::int64_t> used(const StockProblem& problem, const StockPlan& plan) {
    std::vector<std::int64_t> stocks(problem.stocks.size(), 0);
    for (const Pattern& pattern : plan.patterns) {
        stocks[pattern.stock] += pattern.times;
    }
    return stocks;
}

void expect_no_stock_overfilled(const StockProblem& problem, const StockPlan& plan) {
    for (const Pattern& pattern : plan.patterns) {
        Nanometres rope = -problem.cut_loss;
        for (const Take& take : pattern.takes) {
            rope += (problem.items[take.item].length + problem.cut_loss) * take.count;
            EXPECT_TRUE(problem.items[take.item].may_come_from(pattern.stock));
        }
        EXPECT_LE(rope, problem.stocks[pattern.stock].length);
    }
}

std::optional<StockPlan> first_found(const StockProblem& problem,
                                     const std::vector<std::int64_t>& stocks, std::uint32_t seed) {
    const SearchLimits limits;
    CloseFit fit(problem, limits);
    std::minstd_rand random(seed);
    for (int turn = 0; turn < 5'000; ++turn) {
        if (auto plan = fit.turn(stocks, random)) {
            return plan;
        }
    }
    return std::nullopt;
}

class CloseFitTrial : public ::testing::TestWithParam<std::uint32_t> {};

// All of the stock is needed, so any plan is without waste.
TEST_P(CloseFitTrial, APlantedPlanWithoutWasteIsFound) {
    const Planted made = plant(GetParam(), 12);
    const auto plan = first_found(made.problem, made.stocks, 1);
    ASSERT_TRUE(plan);
    expect_no_stock_overfilled(made.problem, *plan);
    EXPECT_EQ(cut(made.problem, *plan), wanted(made.problem));
    EXPECT_EQ(used(made.problem, *plan), made.stocks);
    Amount all = 0;
    for (std::size_t s = 0; s < made.stocks.size(); ++s) {
        all += made.stocks[s] * made.problem.stocks[s].length;
    }
    EXPECT_EQ(plan->value[0], all);
}

// With one stock too few there is no plan.
TEST_P(CloseFitTrial, NothingComesOfTooLittleStock) {
    Planted made = plant(GetParam(), 8);
    --*std::ranges::max_element(made.stocks);
    const SearchLimits limits;
    CloseFit fit(made.problem, limits);
    std::minstd_rand random;
    for (int turn = 0; turn < 20; ++turn) {
        EXPECT_FALSE(fit.turn(made.stocks, random));
    }
}

// The whole search, which is not told what was planted, proves it.
TEST_P(CloseFitTrial, SolvingFindsThePlantedCost) {
    const Planted made = plant(GetParam(), 40);
    Amount all = 0;
    for (std::size_t s = 0; s < made.stocks.size(); ++s) {
        all += made.stocks[s] * made.problem.stocks[s].length;
    }
    const StockPlan plan = solve(made.problem, {});
    expect_no_stock_overfilled(made.problem, plan);
    EXPECT_EQ(cut(made.problem, plan), wanted(made.problem));
    EXPECT_EQ(plan.value[0], all);
    EXPECT_TRUE(plan.proved);
}

INSTANTIATE_TEST_SUITE_P(Many, CloseFitTrial, ::testing::Range(1U, 25U));

TEST(CloseFit, TheSameTurnsGiveTheSamePlan) {
    const Planted made = plant(3, 12);
    const auto first = first_found(made.problem, made.stocks, 7);
    const auto second = first_found(made.problem, made.stocks, 7);
    ASSERT_TRUE(first && second);
    ASSERT_EQ(first->patterns.size(), second->patterns.size());
    for (std::size_t i = 0; i < first->patterns.size(); ++i) {
        EXPECT_EQ(first->patterns[i].stock, second->patterns[i].stock);
        EXPECT_EQ(first->patterns[i].takes, second->patterns[i].takes);
    }
}

// Two reels, two pieces, and each piece may come from one of them only.
TEST(CloseFit, APieceComesOnlyFromStockThatIsAllowed) {
    StockProblem problem;
    problem.stocks.push_back({.length = 10, .each = {1}, .usable = 1});
    problem.stocks.push_back({.length = 10, .each = {1}, .usable = 1});
    problem.items.push_back({5, 2, {}, {false, true}});
    problem.items.push_back({4, 2, {}, {true, false}});
    const auto plan = first_found(problem, {1, 1}, 1);
    ASSERT_TRUE(plan);
    expect_no_stock_overfilled(problem, *plan);
    EXPECT_EQ(cut(problem, *plan), wanted(problem));
}

// Metres to the nanometre: far wider than the tables, so that sizes are rounded, and still no reel
// is cut beyond its end.
TEST(CloseFit, LengthsToTheNanometreAreCutWithinTheirStock) {
    std::minstd_rand random;
    StockProblem problem;
    problem.cut_loss = 3'000'001;
    problem.stocks.push_back({.length = 200'000'000'003, .each = {1}, .usable = 1});
    for (int i = 0; i < 60; ++i) {
        problem.items.push_back(
            {5'000'000'000 + static_cast<Nanometres>(random() % 30'000'000'000U), 1, {}, {}});
    }
    Nanometres rope = 0;
    for (const StockItem& item : problem.items) {
        rope += item.length + problem.cut_loss;
    }
    const auto plan = first_found(problem, {rope / problem.stocks[0].length + 2}, 1);
    ASSERT_TRUE(plan);
    expect_no_stock_overfilled(problem, *plan);
    EXPECT_EQ(cut(problem, *plan), wanted(problem));
}

// A million of one length: not one after the other.
TEST(CloseFit, ManyLikePiecesAreCutTogether) {
    StockProblem problem;
    problem.stocks.push_back({.length = 100, .each = {1}, .usable = 1});
    problem.items.push_back({30, 900'000, {}, {}});
    problem.items.push_back({10, 300'000, {}, {}});
    const auto plan = first_found(problem, {300'000}, 1);
    ASSERT_TRUE(plan);
    EXPECT_EQ(cut(problem, *plan), wanted(problem));
    EXPECT_EQ(used(problem, *plan), std::vector<std::int64_t>{300'000});
    EXPECT_LE(plan->patterns.size(), 100U);
}

// 20 of 7 and 20 of 5, 240 in all: at 7 and 5 each, 20 and 20 cost 240, and so do others; what is
// drawn always holds 240, costs what it must and is no more than there is.
TEST(StockNumbers, WhatIsDrawnHoldsAllPiecesAndCostsLessThanItMust) {
    StockProblem problem;
    problem.stocks.push_back({.length = 7, .available = 30, .each = {7}, .usable = 1});
    problem.stocks.push_back({.length = 5, .available = 30, .each = {5}, .usable = 1});
    problem.items.push_back({5, 48, {}, {}});
    const std::vector<double> about{20.2, 19.7};
    std::minstd_rand random;
    for (int i = 0; i < 50; ++i) {
        const auto numbers = draw_stock_numbers(problem, {about, 243, DrawRule::cheapest}, random);
        ASSERT_EQ(numbers.size(), 2U);
        EXPECT_EQ(numbers[0] * 7 + numbers[1] * 5, 240);
        EXPECT_LE(std::max(numbers[0], numbers[1]), 30);
        EXPECT_TRUE(draw_stock_numbers(problem, {about, 240, DrawRule::cheapest}, random).empty());
        const auto dear = draw_stock_numbers(problem, {about, 243, DrawRule::dearest}, random);
        EXPECT_EQ(dear[0] * 7 + dear[1] * 5, 242);
    }
}

} // namespace

} // namespace libsplice::testing
