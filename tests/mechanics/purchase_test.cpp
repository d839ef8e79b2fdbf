// Purchases, plain and as rigged, against arithmetic done by hand.
#include "libsplice/mechanics/routes/purchase.h"

#include "tests/mechanics/ways.h"

#include <numbers>

namespace libsplice::testing {
namespace {

const Length rope = millimetres(5.0);

PurchaseLength length_of(const Purchase& purchase, Length diameter = rope) {
    const auto length = purchase_length(purchase, diameter);
    EXPECT_TRUE(std::holds_alternative<PurchaseLength>(length));
    const auto* there = std::get_if<PurchaseLength>(&length);
    return there != nullptr ? *there : PurchaseLength{};
}

double total_of(const Purchase& purchase, Length diameter = rope) {
    return length_of(purchase, diameter).way.total().si() * 1000.0;
}

Purchase as_rigged() {
    Purchase purchase;
    purchase.parts = 4;
    purchase.run = millimetres(720.0);
    purchase.hauled = millimetres(180.0);
    purchase.becket = millimetres(16.0);
    purchase.sheaves = {{millimetres(22.0), Angle(std::numbers::pi)},
                        {millimetres(30.0), Angle(std::numbers::pi / 2.0)}};
    purchase.lead = millimetres(850.0);
    purchase.tail = millimetres(380.0);
    return purchase;
}

TEST(Purchase, OfTheExample) {
    const auto purchase =
        plain_purchase(4, millimetres(1200.0), millimetres(20.0), millimetres(600.0));
    EXPECT_NEAR(total_of(purchase), 5517.809725, 5e-7);
    const auto length = length_of(purchase);
    EXPECT_NEAR(length.way.straight.si(), 5.4, 1e-13);
    EXPECT_EQ(length.way.turns, 3U);
    EXPECT_EQ(length.tail_eased.si(), 0.6);
    EXPECT_EQ(length.tail_hauled.si(), 0.6);
}

TEST(Purchase, AsRigged) {
    // 4 x 720 - 16 + 850 + 380 = 4094; 13.5 pi + 17.5 pi/2 = 69.90043654.
    const auto length = length_of(as_rigged());
    EXPECT_NEAR(length.way.straight.si() * 1000.0, 4094.0, 1e-9);
    EXPECT_NEAR(length.way.wrapped.si() * 1000.0, 69.90043654, 5e-9);
    EXPECT_EQ(length.way.turns, 2U);
}

TEST(Purchase, HaulingPullsThePartsIntoTheTail) {
    // 380 + 4 x (720 - 180) = 2540.
    const auto length = length_of(as_rigged());
    EXPECT_NEAR(length.tail_eased.si() * 1000.0, 380.0, 1e-10);
    EXPECT_NEAR(length.tail_hauled.si() * 1000.0, 2540.0, 1e-9);
}

TEST(Purchase, OnePartIsTheRunAndTheTail) {
    const auto single = plain_purchase(1, millimetres(300.0), millimetres(20.0), millimetres(50.0));
    EXPECT_NEAR(total_of(single), 350.0, 1e-10);
}

TEST(PurchaseFault, NoParts) {
    expect_fault(purchase_length(plain_purchase(0, rope, rope, rope), rope), WayError::too_few, 0);
}

TEST(PurchaseFault, BlocksThatMeet) {
    // The larger sheave of 30 and the rope of 5 want 35 between the axles.
    auto purchase = as_rigged();
    purchase.hauled = millimetres(35.0);
    EXPECT_TRUE(std::holds_alternative<PurchaseLength>(purchase_length(purchase, rope)));
    purchase.hauled = millimetres(34.0);
    expect_fault(purchase_length(purchase, rope), WayError::blocks_meet_hauled, 1, 35.0, 34.0);
    purchase.run = millimetres(34.0);
    expect_fault(purchase_length(purchase, rope), WayError::blocks_meet_eased, 1, 35.0, 34.0);
}

TEST(PurchaseFault, HauledLongerThanEased) {
    auto purchase = as_rigged();
    purchase.hauled = millimetres(721.0);
    expect_fault(purchase_length(purchase, rope), WayError::hauled_past_run, 0, 720.0, 721.0);
}

TEST(PurchaseFault, BecketPastTheOtherBlock) {
    auto purchase = as_rigged();
    purchase.becket = millimetres(721.0);
    expect_fault(purchase_length(purchase, rope), WayError::becket_past_block, 0, 720.0, 721.0);
}

TEST(PurchaseProperty, AThreadRoundPointsIsToAndFro) {
    Draw draw;
    for (int round = 0; round < 50; ++round) {
        const double run = draw(100.0, 2000.0);
        const double tail = draw(0.0, 900.0);
        for (std::size_t parts = 1; parts < 7; ++parts) {
            std::vector<Position> path{at(0, 0)};
            for (std::size_t i = 1; i <= parts; ++i) {
                path.push_back(at(i % 2 == 0 ? 0.0 : run, 0));
            }
            const double legs = polyline_length(path).si() * 1000.0 + tail;
            EXPECT_NEAR(
                total_of(plain_purchase(parts, millimetres(run), {}, millimetres(tail)), {}), legs,
                1e-9);
            const Length thread = millimetres(1e-7);
            EXPECT_NEAR(total_of(plain_purchase(parts, millimetres(run), thread, millimetres(tail)),
                                 thread),
                        legs, 1e-5);
        }
    }
}

TEST(PurchaseProperty, WhatTheRunGivesUpTheTailGains) {
    Draw draw;
    for (int round = 0; round < 50; ++round) {
        auto purchase = as_rigged();
        purchase.hauled = millimetres(draw(40.0, 700.0));
        const auto eased = length_of(purchase);
        auto shut = purchase;
        shut.run = *purchase.hauled;
        shut.tail = eased.tail_hauled;
        // The same rope, whichever state it is reckoned in.
        EXPECT_NEAR(total_of(shut), eased.way.total().si() * 1000.0, 1e-9);
    }
}

} // namespace
} // namespace libsplice::testing
