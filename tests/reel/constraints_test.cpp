// Lots, pairs, colours, prices and orders, each worked out by hand.
#include "libsplice/reel/plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace libsplice::testing {

namespace {

constexpr Nanometres m = nanometres_per_metre;
constexpr Nanometres mm = 1'000'000;

ReelStock reel(std::string id, Nanometres length, std::int64_t count = 1) {
    ReelStock stock;
    stock.id = std::move(id);
    stock.rope = "a";
    stock.length = length;
    stock.count = count;
    stock.usable = m;
    stock.per_metre = money_unit;
    return stock;
}

ReelStock order(std::string id, std::optional<Nanometres> length) {
    ReelStock stock = reel(std::move(id), m);
    stock.length = length;
    stock.count.reset();
    stock.kind = StockKind::order;
    return stock;
}

Demand pieces(Nanometres length, std::int64_t count, std::string name = "line") {
    return {.rope = "a", .length = length, .count = count, .name = std::move(name)};
}

ReelQuestion question(std::vector<Demand> demands, std::vector<ReelStock> stock) {
    ReelQuestion question;
    question.demands = std::move(demands);
    question.stock = std::move(stock);
    return question;
}

ReelPlan plan(const ReelQuestion& question) {
    ReelPlan plan = plan_reels(question, {});
    EXPECT_FALSE(check_balance(question, plan));
    return plan;
}

Code only_fault(const ReelPlan& plan) {
    EXPECT_EQ(plan.unplaced.size(), 1U);
    return plan.unplaced.empty() ? Code::rope_unbalanced : plan.unplaced[0].fault.code;
}

// --- CutLoss ------------------------------------------------------------------------------------

// 3 pieces of 2 m with 10 mm between them need 6.02 m, and no cut after the last.
TEST(CutLoss, ItFallsBetweenPieces) {
    auto asked = question({pieces(2 * m, 3)}, {reel("r", 6 * m + 20 * mm)});
    asked.cut_loss = 10 * mm;
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.cuts.size(), 1U);
    EXPECT_EQ(made.cuts[0].cut_loss, 20 * mm);
    EXPECT_EQ(made.cuts[0].left, 0);
    EXPECT_EQ(made.cuts[0].left_is, LeftIs::nothing);
    EXPECT_EQ(made.cuts[0].pieces[2].at, 4 * m + 20 * mm);
}

TEST(CutLoss, AMillimetreLessIsTooShort) {
    auto asked = question({pieces(2 * m, 3)}, {reel("r", 6 * m + 19 * mm)});
    asked.cut_loss = 10 * mm;
    EXPECT_EQ(plan(asked).bought, 2 * m);
}

// With 4 mm over, the cut behind the last piece takes just these; with 1.5 m over, 10 mm of them.
TEST(CutLoss, WhatIsLeftPaysForTheLastCut) {
    auto asked = question({pieces(2 * m, 3)}, {reel("r", 6 * m + 24 * mm)});
    asked.cut_loss = 10 * mm;
    EXPECT_EQ(plan(asked).cuts[0].cut_loss, 24 * mm);
    asked.stock = {reel("r", 6 * m + 20 * mm + 1'500 * mm)};
    const ReelPlan made = plan(asked);
    EXPECT_EQ(made.cuts[0].cut_loss, 30 * mm);
    EXPECT_EQ(made.cuts[0].left, 1'490 * mm);
    EXPECT_EQ(made.cuts[0].left_is, LeftIs::offcut);
}

// --- What remains ----------------------------------------------------------------------------

TEST(Left, FromTheUsableLengthOnItIsAnOffcut) {
    auto asked = question({pieces(4 * m, 1)}, {reel("r", 6 * m)});
    asked.stock[0].usable = 2 * m;
    EXPECT_EQ(plan(asked).cuts[0].left_is, LeftIs::offcut);
    asked.stock[0].usable = 2 * m + 1;
    EXPECT_EQ(plan(asked).cuts[0].left_is, LeftIs::waste);
}

// --- Lots and colours ------------------------------------------------------------------------

TEST(Lots, ALineThatNamesALotGetsThatLot) {
    auto asked = question({pieces(4 * m, 2)}, {reel("r", 20 * m), reel("s", 20 * m)});
    asked.stock[0].lot = "one";
    asked.stock[1].lot = "two";
    asked.demands[0].lot = "two";
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.cuts.size(), 1U);
    EXPECT_EQ(made.cuts[0].stock, 1U);
}

TEST(Lots, ALotThatIsNotThereIsAFault) {
    auto asked = question({pieces(4 * m, 2)}, {reel("r", 20 * m)});
    asked.stock[0].lot = "one";
    asked.demands[0].lot = "three";
    EXPECT_EQ(only_fault(plan(asked)), Code::lot_cannot_hold);
}

/// Lot one has 4.5 m twice, lot two 9 m once.
ReelQuestion pair_question() {
    auto asked = question({pieces(4 * m, 1, "port"), pieces(4 * m, 1, "starboard")},
                          {reel("r", 4'500 * mm), reel("s", 4'500 * mm), reel("t", 9 * m)});
    asked.stock[0].lot = "one";
    asked.stock[1].lot = "two";
    asked.stock[2].lot = "three";
    for (Demand& demand : asked.demands) {
        demand.pair = "bridle";
    }
    return asked;
}

TEST(Lots, BothHalvesOfAPairComeFromOneLot) {
    const ReelQuestion asked = pair_question();
    std::set<std::string> lots;
    for (const ReelCut& cut : plan(asked).cuts) {
        lots.insert(asked.stock[cut.stock].lot);
    }
    EXPECT_EQ(lots, std::set<std::string>{"three"});
}

TEST(Lots, APairThatNoLotCanGiveIsBoughtWhole) {
    ReelQuestion asked = pair_question();
    asked.stock.pop_back();
    const ReelPlan made = plan(asked);
    EXPECT_TRUE(made.unplaced.empty());
    EXPECT_EQ(made.bought, 8 * m);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].pieces, 2);
}

TEST(Lots, ALotThatDoesNotSufficeIsNotBoughtElsewhere) {
    auto asked = question({pieces(4 * m, 3)}, {reel("r", 9 * m)});
    asked.stock[0].lot = "one";
    asked.demands[0].lot = "one";
    const ReelPlan made = plan(asked);
    EXPECT_EQ(only_fault(made), Code::stock_runs_out);
    EXPECT_EQ(made.unplaced[0].count, 1);
    EXPECT_TRUE(made.order.empty());
}

// A reel whose lot nobody wrote down is a lot of its own.
TEST(Lots, ReelsOfUnknownLotAreNotTakenForOne) {
    ReelQuestion asked = pair_question();
    asked.stock = {reel("r", 4'500 * mm, 2)};
    EXPECT_EQ(plan(asked).bought, 8 * m);
    asked.stock.push_back(reel("s", 8 * m));
    const ReelPlan made = plan(asked);
    EXPECT_EQ(made.bought, 0);
    EXPECT_EQ(made.cuts.size(), 1U);
}

TEST(Colours, ALineGetsItsColourOrRopeOfWhichNoneIsKnown) {
    auto asked = question({pieces(4 * m, 2)}, {reel("r", 20 * m)});
    asked.demands[0].colour = "red";
    asked.stock[0].colour = "blue";
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.stock[made.order[0].stock].colour, "red");
    asked.stock[0].colour = "";
    EXPECT_TRUE(plan(asked).order.empty());
}

// --- What cannot be done ---------------------------------------------------------------------

TEST(Unplaced, APieceLongerThanAnyReelIsNamed) {
    const auto made = plan(question({pieces(4 * m, 2), pieces(31 * m, 1, "long one")},
                                    {reel("r", 20 * m), reel("s", 30 * m)}));
    EXPECT_EQ(only_fault(made), Code::piece_longer_than_reels);
    EXPECT_EQ(made.unplaced[0].demand, 1U);
    EXPECT_NE(made.unplaced[0].fault.text.find("30 m"), std::string::npos);
}

// An offcut is no reel: that it is short says nothing of what the shop can buy.
TEST(Unplaced, APieceLongerThanOffcutsIsBought) {
    auto asked = question({pieces(4 * m, 1)}, {reel("o", 3 * m)});
    asked.stock[0].kind = StockKind::offcut;
    EXPECT_EQ(plan(asked).bought, 4 * m);
}

// --- What the stock lacks --------------------------------------------------------------------

TEST(Bought, WithoutAnyStockTheWholeJobIsOneRowARope) {
    auto asked = question({pieces(4 * m, 2), pieces(7 * m, 1, "long"), pieces(m, 3)}, {});
    asked.demands[2].rope = "b";
    asked.demands[0].lot = "one"; // nothing is there to be of another lot
    for (Demand& demand : asked.demands) {
        demand.title = "rope " + demand.rope;
    }
    asked.demands[0].per_metre = 2 * money_unit;
    const ReelPlan made = plan(asked);
    EXPECT_TRUE(made.unplaced.empty());
    EXPECT_TRUE(made.proved);
    ASSERT_EQ(made.order.size(), 2U);
    EXPECT_EQ(made.stock[made.order[0].stock].title, "rope a");
    EXPECT_EQ(made.order[0].length, 15 * m);
    EXPECT_EQ(made.order[0].count, 1);
    EXPECT_EQ(made.order[0].pieces, 3);
    EXPECT_EQ(made.order[0].longest, 7 * m);
    EXPECT_EQ(made.order[0].cost, 30 * money_unit);
    EXPECT_EQ(made.order[1].length, 3 * m);
    EXPECT_FALSE(made.order[1].cost); // nobody says what it costs
    EXPECT_EQ(made.quality.value, 30 * money_unit);
}

TEST(Bought, ARopeThatIsNotOnTheStockIsBoughtByTheMetre) {
    auto asked = question({pieces(4 * m, 2)}, {reel("r", 20 * m)});
    asked.demands[0].rope = "b";
    ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].length, 8 * m);
    asked.demands[0].lot = "one";
    made = plan(asked);
    EXPECT_EQ(only_fault(made), Code::rope_not_on_stock);
}

// 5 of 4 m from 10 m and 6 m: three fit, and two are bought at what the stock says a metre costs.
TEST(Bought, WhatTheStockHasIsCutFirst) {
    auto asked = question({pieces(4 * m, 5)}, {reel("r", 10 * m), reel("s", 6 * m)});
    asked.stock[0].per_metre = 3 * money_unit;
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].length, 8 * m);
    EXPECT_EQ(made.order[0].cost, 24 * money_unit);
    EXPECT_EQ(made.ledger[0].stock, 16 * m);
    EXPECT_EQ(made.ledger[0].ordered, 8 * m);
    EXPECT_EQ(made.quality.value, (30 + 6 + 24) * money_unit);
}

TEST(Bought, EachColourIsARowOfItsOwn) {
    auto asked = question({pieces(4 * m, 1), pieces(5 * m, 1), pieces(6 * m, 1)}, {});
    asked.demands[0].colour = "red";
    asked.demands[1].colour = "blue";
    asked.demands[2].colour = "red";
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 2U);
    EXPECT_EQ(made.order[0].length, 10 * m);
    EXPECT_EQ(made.order[1].length, 5 * m);
}

// Rope a costs 1 a metre and 8 m of it are wanted; of rope b nobody knows the price.
TEST(Bought, MetresAreNeverAddedToMoney) {
    auto asked =
        question({pieces(4 * m, 2), pieces(5 * m, 1)}, {reel("r", 8 * m), reel("s", 50 * m)});
    asked.demands[1].rope = "b";
    asked.stock[1].rope = "b";
    asked.stock[1].priced = false;
    const ReelPlan made = plan(asked);
    EXPECT_EQ(made.quality.value, 8 * money_unit);
    EXPECT_EQ(made.unpriced.value, 50 * money_unit);
}

// --- Prices and orders -----------------------------------------------------------------------

// 60 m are wanted: a reel of 100 m costs 90, two of 50 m at 1.2 a metre cost 120.
TEST(Orders, APriceMayBeOfAReelOrOfAMetre) {
    auto asked = question({pieces(20 * m, 3)}, {order("big", 100 * m), order("small", 50 * m)});
    asked.stock[0].per_reel = 90 * money_unit;
    asked.stock[1].per_metre = 1'200'000;
    ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].stock, 0U);
    EXPECT_EQ(made.order[0].cost, 90 * money_unit);
    asked.stock[0].per_reel = 130 * money_unit;
    made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].stock, 1U);
    EXPECT_EQ(made.order[0].count, 2);
    EXPECT_EQ(made.order[0].cost, 120 * money_unit);
    EXPECT_TRUE(made.proved);
}

// An offcut's metre counts half: 10 m of offcut count 5, and go before a reel of 8 m.
TEST(Orders, OffcutsCountHalf) {
    auto asked = question({pieces(6 * m, 1)}, {reel("r", 8 * m), reel("o", 10 * m)});
    asked.stock[1].kind = StockKind::offcut;
    ReelPlan made = plan(asked);
    EXPECT_EQ(made.cuts[0].stock, 1U);
    EXPECT_EQ(made.quality.value, 5 * money_unit);
    asked.offcut_rate = 0.9;
    EXPECT_EQ(plan(asked).cuts[0].stock, 0U);
}

// 3 reels are the least: one is cut, two come back whole.
TEST(Orders, AMinimumOfReelsIsOrderedInFull) {
    auto asked = question({pieces(20 * m, 2)}, {order("o", 50 * m)});
    asked.stock[0].least_count = 3;
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].count, 3);
    EXPECT_EQ(made.quality.value, 150 * money_unit);
}

// By the metre a piece costs its length; 4 m are wanted and 10 m are the least.
TEST(Orders, ByTheMetreAPieceIsOrderedInItsLength) {
    auto asked = question({pieces(2 * m, 2)}, {order("o", std::nullopt)});
    ReelPlan made = plan(asked);
    EXPECT_EQ(made.quality.value, 4 * money_unit);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].length, 4 * m);
    EXPECT_EQ(made.order[0].count, 1);
    EXPECT_EQ(made.order[0].pieces, 2);
    asked.stock[0].least_length = 10 * m;
    made = plan(asked);
    EXPECT_EQ(made.quality.value, 10 * money_unit);
    EXPECT_EQ(made.ledger[0].ordered, 10 * m);
    EXPECT_EQ(made.ledger[0].offcuts, 6 * m);
}

// A minimum of 10 m at 1 a metre is not worth it where a reel of 9 m can be had for 9.
TEST(Orders, AMinimumThatIsNotWorthItIsNotOrdered) {
    auto asked = question({pieces(4 * m, 2)}, {order("o", std::nullopt), order("r", 9 * m)});
    asked.stock[0].least_length = 10 * m;
    const ReelPlan made = plan(asked);
    ASSERT_EQ(made.order.size(), 1U);
    EXPECT_EQ(made.order[0].stock, 1U);
    EXPECT_EQ(made.quality.value, 9 * money_unit);
}

// --- Aims ------------------------------------------------------------------------------------

// 2 of 4 m. From the offcuts of 4.5 m: 1 m wasted, no reel. From the reel of 9.5 m: one reel, and
// 1.5 m come back.
TEST(Aims, EachMakesSomethingElseSmall) {
    auto asked = question({pieces(4 * m, 2)}, {reel("r", 9'500 * mm), reel("o", 4'500 * mm, 2)});
    asked.stock[1].kind = StockKind::offcut;
    asked.objective = Objective::waste;
    ReelPlan made = plan(asked);
    EXPECT_EQ(made.quality.value, 0);
    EXPECT_EQ(made.cuts[0].stock, 0U);
    asked.objective = Objective::new_reels;
    made = plan(asked);
    EXPECT_EQ(made.quality.value, 0);
    EXPECT_EQ(made.cuts[0].stock, 1U);
    asked.objective = Objective::cost;
    made = plan(asked);
    EXPECT_EQ(made.quality.value, 4'500'000); // two offcuts at half of 4.5
    EXPECT_EQ(made.cuts[0].stock, 1U);
}

} // namespace

} // namespace libsplice::testing
