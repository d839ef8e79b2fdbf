// Loads of lines against the figures that are printed with their formulae.
#include "libsplice/mechanics/loads/loads.h"

#include <gtest/gtest.h>

#include <numbers>

namespace libsplice::testing {
namespace {

/// As the catalogue prints it, kgf on a square metre at one knot.
constexpr double pressure = 0.02104;

constexpr Speed knots(double value) {
    return Speed(value * metres_per_second_per_knot);
}
constexpr Force kgf(double value) {
    return newtons(value * newtons_per_kgf);
}
constexpr Angle turned(double degrees) {
    return Angle(degrees * std::numbers::pi / 180.0);
}

TEST(SheetLoad, IsAsThePrintedRuleHasIt) {
    // 0.02104 x 25 x 20^2 = 210.4 kgf; a magazine's rounded form prints 210 daN for the same sail.
    EXPECT_NEAR(sheet_load(Area(25), knots(20), pressure) / kgf(1), 210.4, 0.05);
    EXPECT_NEAR(sheet_load(Area(25), knots(20), pressure).si() / 10, 210, 5);
}

TEST(SheetLoad, InFeetAndPoundsIsTheSameRule) {
    // The same page prints 0.00431 lbf on a square foot: 190 ft2 at 18 knots, 265.3 lbf.
    const double pounds =
        sheet_load(Area(190 * 0.09290304), knots(18), pressure).si() / newtons_per_lbf;
    EXPECT_NEAR(pounds, 0.00431 * 190 * 18 * 18, 0.5);
}

TEST(MainsheetLoad, GrowsAsTheSheetMovesInFromTheBoomsEnd) {
    const MainsailShape end_of_boom{metres(2.4), metres(5.6), metres(0)};
    const MainsailShape inboard{metres(2.4), metres(5.6), metres(0.6)};
    EXPECT_NEAR(*mainsheet_load(end_of_boom, knots(20), pressure) / kgf(1), 104.0, 0.05);
    EXPECT_NEAR(*mainsheet_load(inboard, knots(20), pressure) / kgf(1), 138.6, 0.1);
}

TEST(MainsheetLoad, HasNoAnswerAtTheMast) {
    EXPECT_FALSE(mainsheet_load({metres(2.4), metres(5.6), metres(2.4)}, knots(20), pressure));
    EXPECT_FALSE(mainsheet_load({metres(2.4), metres(5.6), metres(3)}, knots(20), pressure));
}

TEST(BlockLoad, IsAsTheCataloguePrintsItInPerCent) {
    const auto percent = [](double turn) {
        return block_load(newtons(100), turned(turn)).si();
    };
    EXPECT_NEAR(percent(30), 52, 0.5);
    EXPECT_NEAR(percent(45), 76, 0.6);
    EXPECT_NEAR(percent(60), 100, 1e-9);
    EXPECT_NEAR(percent(90), 141, 0.5);
    EXPECT_NEAR(percent(120), 173, 0.5);
    EXPECT_NEAR(percent(150), 193, 0.5);
    EXPECT_NEAR(percent(180), 200, 1e-9);
}

TEST(Tackle, CostsATenthASheave) {
    // 600 lb on a luff tackle of three sheaves and three parts takes a pull of 260 lb.
    EXPECT_NEAR(tackle_pull(newtons(600), 3, 3, 0.1).si(), 260, 1e-9);
}

TEST(Tackle, LosesLessInRollers) {
    EXPECT_NEAR(tackle_advantage(4, 0.962), 3.63, 0.01);
    EXPECT_LT(tackle_advantage(4, 0.917), tackle_advantage(4, 0.962));
    EXPECT_NEAR(tackle_advantage(1, 0.917), 0.917, 1e-12);
}

TEST(RightingMoment, IsAsReadForABoatOfTwoHulls) {
    const Moment moment = righting_moment({Mass(107), metres(2.30), Mass(150), metres(1.0)});
    EXPECT_NEAR(moment.si() / newtons_per_kgf, 618, 0.5);
    EXPECT_NEAR(pull_at(moment, metres(2.0)) / kgf(1), 309, 0.3);
}

} // namespace
} // namespace libsplice::testing
