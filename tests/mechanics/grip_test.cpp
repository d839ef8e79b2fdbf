// The grip of a braid on a buried tail against figures worked out for it beforehand.
#include "libsplice/mechanics/rope/grip.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <vector>

namespace libsplice::testing {
namespace {

const Length diameter = millimetres(5.0);
constexpr double half = 0.5; // the load's share in the tail of an eye on a free pin

GrippingBraid braid(double angle, double friction) {
    return {degrees(angle), friction, 1.0};
}

/// Full over its first part, then evenly to nothing; lengths in diameters.
BuriedTail full_and_tapered(double full, double tapered) {
    return tapered_tail(diameter * (full + tapered), diameter * tapered);
}

double margin_of(std::span<const BuriedPart> tail, const GrippingBraid& in) {
    return grip_margin(tail, diameter, in, half).value_or(std::nan(""));
}

TEST(Grip, PerDiameterAndUnitOfFriction) {
    EXPECT_NEAR(grip_per_diameter(degrees(12.0)).value_or(0.0), 0.243324244, 5e-10);
    EXPECT_NEAR(grip_per_diameter(degrees(15.0)).value_or(0.0), 0.4107055682, 5e-11);
    EXPECT_NEAR(grip_per_diameter(degrees(18.0)).value_or(0.0), 0.6556330767, 5e-11);
}

TEST(Grip, OfAnEmptyBraidIsThatOfItsHelixAlone) {
    // g = 1: 2 sqrt(2) tan^2 of 15 degrees = 2.828427125 x 0.0717967697.
    EXPECT_NEAR(grip_per_diameter(degrees(15.0), 0.0).value_or(0.0), 0.2030719308, 5e-10);
    EXPECT_NEAR(grip_per_diameter(degrees(15.0), 1.0, 0.0).value_or(0.0), 0.2030719308, 5e-10);
}

TEST(Grip, OfATailInFullSectionThatJustHolds) {
    EXPECT_NEAR(margin_of(full_and_tapered(24.10997889, 0.0), braid(15.0, 0.07)), 1.0, 5e-10);
    EXPECT_NEAR(margin_of(full_and_tapered(40.69509235, 0.0), braid(12.0, 0.07)), 1.0, 5e-10);
}

TEST(Grip, OfATailWithItsLastThirdTaperedThatJustHolds) {
    const auto margin = [](double tail) {
        return margin_of(full_and_tapered(tail * 2.0 / 3.0, tail / 3.0), braid(15.0, 0.07));
    };
    EXPECT_NEAR(margin(26.28710817), 1.0, 5e-10);
    EXPECT_NEAR(margin(52.57421633), 2.0, 5e-10);
}

TEST(Grip, ExponentOf48DiametersFullAnd24Tapered) {
    const auto exponent = grip_exponent(full_and_tapered(48.0, 24.0), diameter, braid(15.0, 0.07));
    ASSERT_TRUE(exponent);
    EXPECT_NEAR(*exponent, 1.898519863, 5e-10);
}

TEST(Grip, FrictionThatMakes72DiametersJustHold) {
    struct Row {
        double angle;
        std::array<double, 3> friction; ///< for margins of 1, 2 and 3
    };
    for (const auto& row :
         {Row{12.0, {0.04280, 0.08561, 0.12841}}, Row{15.0, {0.02556, 0.05111, 0.07667}},
          Row{18.0, {0.01618, 0.03236, 0.04853}}}) {
        // The margin is in proportion to the friction.
        const double of_one = margin_of(full_and_tapered(48.0, 24.0), braid(row.angle, 1.0));
        for (std::size_t i = 0; i < row.friction.size(); ++i) {
            EXPECT_NEAR(static_cast<double>(i + 1) / of_one, row.friction.at(i), 5e-6) << row.angle;
        }
    }
}

TEST(Grip, MarginsOfThePublishedBuries) {
    struct Row {
        double angle;
        double of_72; ///< 48 full and 24 tapered
        double of_42; ///< 28 full and 14 tapered
    };
    for (const auto& row : {Row{12.0, 1.64, 0.95}, Row{15.0, 2.74, 1.60}, Row{18.0, 4.33, 2.52}}) {
        EXPECT_NEAR(margin_of(full_and_tapered(48.0, 24.0), braid(row.angle, 0.07)), row.of_72,
                    0.005)
            << row.angle;
        EXPECT_NEAR(margin_of(full_and_tapered(28.0, 14.0), braid(row.angle, 0.07)), row.of_42,
                    0.005)
            << row.angle;
    }
}

TEST(Grip, PolyesterHoldsWithLengthInverseToFriction) {
    // 72 D at 0.07 and 42 D at 0.12 hold alike.
    EXPECT_NEAR(margin_of(full_and_tapered(28.0, 14.0), braid(15.0, 0.12)),
                margin_of(full_and_tapered(48.0, 24.0), braid(15.0, 0.07)), 1e-12);
}

TEST(Grip, ExponentIsTheSumOverManyShortParts) {
    constexpr int parts = 4000;
    std::vector<BuriedPart> many;
    for (int i = 0; i < parts; ++i) {
        const double section = 0.9 - 0.7 * (i + 0.5) / parts;
        many.push_back({metres(0.3) / parts, section, section});
    }
    const std::array one{BuriedPart{metres(0.3), 0.9, 0.2}};
    const auto summed = grip_exponent(many, diameter, braid(18.0, 0.1));
    const auto whole = grip_exponent(one, diameter, braid(18.0, 0.1));
    ASSERT_TRUE(summed && whole);
    EXPECT_NEAR(*whole, *summed, 1e-7);
}

TEST(Grip, NeededGrowsWithoutLimitAsTheTailTakesAll) {
    EXPECT_NEAR(grip_needed(0.5), 0.693147181, 5e-10);
    EXPECT_NEAR(grip_needed(0.9), 2.302585093, 5e-10);
    EXPECT_NEAR(grip_needed(0.999), 6.907755279, 5e-9);
    EXPECT_DOUBLE_EQ(grip_needed(0.0), 0.0);
}

TEST(Grip, NoneWhereTheBraidJams) {
    // sin^2 of 24.1 degrees is 1/6, three times which is a half.
    EXPECT_TRUE(grip_per_diameter(degrees(24.0)));
    EXPECT_FALSE(grip_per_diameter(degrees(24.2)));
    EXPECT_TRUE(grip_per_diameter(degrees(24.2), 0.5));
    EXPECT_FALSE(grip_exponent(full_and_tapered(10.0, 5.0), diameter, braid(25.0, 0.1)));
    EXPECT_FALSE(grip_margin(full_and_tapered(10.0, 5.0), diameter, braid(25.0, 0.1), half));
}

TEST(Grip, NoneWithoutATail) {
    EXPECT_DOUBLE_EQ(margin_of(full_and_tapered(0.0, 0.0), braid(15.0, 0.07)), 0.0);
}

} // namespace
} // namespace libsplice::testing
