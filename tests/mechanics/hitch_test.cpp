// Turns and clove hitches against figures worked out for them beforehand.
#include "libsplice/mechanics/rope/hitch.h"

#include <gtest/gtest.h>

#include <cmath>

namespace libsplice::testing {
namespace {

TEST(Turn, IsTheCircleOfTheCentreline) {
    EXPECT_NEAR(round_turn(millimetres(30.0), millimetres(10.0)).si(), 0.1256637061, 1e-10);
}

TEST(Turn, RoundTwoAlikeIsACircleAndTwoLegs) {
    // Touching: pi (10 + 2) + 2 x 10 = 57.69911184. 5 clear: 10 more.
    const Length pin = millimetres(10.0);
    EXPECT_NEAR(turn_round_two(pin, pin, {}, millimetres(2.0)).si(), 0.05769911184, 5e-12);
    EXPECT_NEAR(turn_round_two(pin, pin, millimetres(5.0), millimetres(2.0)).si(), 0.06769911184,
                5e-12);
}

TEST(Turn, RoundTwoUnlikeDoesNotMindTheOrder) {
    // Radii 9 and 4, centres 20 apart: 2 sqrt(375) + 13 pi + 10 asin(1/4) = 82.09734051.
    const auto turn = [](double first, double second) {
        return turn_round_two(millimetres(first), millimetres(second), millimetres(10.0),
                              millimetres(3.0))
            .si();
    };
    EXPECT_NEAR(turn(15.0, 5.0), 0.08209734051, 1e-12);
    EXPECT_NEAR(turn(5.0, 15.0), turn(15.0, 5.0), 1e-15);
}

TEST(Capstan, TurnsThatBringALoadDownAThousandfold) {
    EXPECT_NEAR(turns_to_hold(1000.0, 0.12), 9.161694986, 5e-10);
    EXPECT_NEAR(turns_to_hold(1000.0, 0.07), 15.70576283, 5e-9);
    EXPECT_DOUBLE_EQ(turns_to_hold(1.0, 0.12), 0.0);
}

TEST(Capstan, LoadPastTurnsIsTheInverse) {
    EXPECT_NEAR(load_past(9.161694986, 0.12), 1e-3, 1e-12);
    EXPECT_DOUBLE_EQ(load_past(0.0, 0.12), 1.0);
    // One turn at 1/(2 pi) lets 1/e past.
    EXPECT_NEAR(load_past(1.0, 0.15915494309), 0.36787944117, 1e-10);
}

TEST(CloveHitch, HoldsFromItsThresholdOn) {
    EXPECT_NEAR(clove_hitch_margin(metres(5.0), metres(1.0), 0.148589298, 0.148589298), 1.0, 1e-8);
    EXPECT_NEAR(clove_hitch_margin(metres(10.0), metres(1.0), 0.1656599835, 0.1656599835), 1.0,
                1e-9);
}

TEST(CloveHitch, SlipsInSlipperyRope) {
    EXPECT_NEAR(clove_hitch_margin(metres(5.0), metres(1.0), 0.07, 0.07), 0.2875144984, 5e-11);
}

TEST(CloveHitch, DependsOnTheRatioOfDiametersOnly) {
    EXPECT_DOUBLE_EQ(clove_hitch_margin(millimetres(40.0), millimetres(8.0), 0.1, 0.12),
                     clove_hitch_margin(metres(5.0), metres(1.0), 0.1, 0.12));
}

TEST(CloveHitch, FrictionOnThePostAndOnTheRopeCountApart) {
    // cos g = 6/8, sin g = sqrt(7)/4 = 0.6614378278; 2 x that x 0.3 = 0.3968626967.
    EXPECT_NEAR(clove_hitch_margin(metres(5.0), metres(1.0), 0.2, 0.1),
                0.3968626967 * std::exp(1.2566370614), 1e-9);
    EXPECT_NEAR(clove_hitch_margin(metres(5.0), metres(1.0), 0.0, 0.3), 0.3968626967, 1e-9);
}

} // namespace
} // namespace libsplice::testing
