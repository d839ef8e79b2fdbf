// Pairs dropped from a tail: where, what is left, and the steps in the host's diameter.
#include "libsplice/mechanics/rope/taper.h"

#include <gtest/gtest.h>

#include <array>

namespace libsplice {
namespace {

const Length diameter = millimetres(10.0);

TEST(Taper, FivePairsOfTwelveLeaveAPair) {
    const auto taper = taper_schedule(12, 5, millimetres(240.0), diameter);
    constexpr std::array sections{0.833333, 0.666667, 0.5, 0.333333, 0.166667};
    ASSERT_EQ(taper.drops.size(), sections.size());
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const auto& drop = taper.drops[i];
        EXPECT_NEAR(drop.section, sections.at(i), 5e-7);
        EXPECT_EQ(drop.strands_left, 10 - 2 * static_cast<int>(i));
        // A sixth of the taper apart: 200, 160, 120, 80 and 40 mm before the end.
        EXPECT_NEAR(drop.from_end.si() * 1000.0, 200.0 - 40.0 * static_cast<double>(i), 1e-9);
    }
    EXPECT_NEAR(taper.spacing.si(), 0.040, 1e-12);
    EXPECT_NEAR(taper.end_section, 0.166667, 5e-7);
    EXPECT_FALSE(taper.ends_in_more_than_a_pair());
    EXPECT_DOUBLE_EQ(taper.even_end(), 0.0);
}

TEST(Taper, StepsOfTwelveStrandsAreAFewHundredthsOfTheDiameter) {
    const auto taper = taper_schedule(12, 5, millimetres(240.0), diameter);
    // sqrt(2) - sqrt(11/6) = 0.0602076 at the first, sqrt(7/6) - 1 = 0.0801234 at the end.
    EXPECT_NEAR(taper.drops[0].step / diameter, 0.0602076, 5e-7);
    EXPECT_NEAR(taper.end_step / diameter, 0.0801234, 5e-7);
    for (const PairDrop& drop : taper.drops) {
        EXPECT_GT(drop.step / diameter, 0.060);
        EXPECT_LT(drop.step / diameter, 0.080);
    }
    // sqrt(1 + 1/6) = 1.0801234 of the rope over the last pair.
    EXPECT_NEAR(taper.drops[4].outside / diameter, 1.0801234, 5e-7);
}

TEST(Taper, ABluntEndIsOneStep) {
    const auto blunt = taper_schedule(12, 0, Length(), diameter);
    EXPECT_TRUE(blunt.drops.empty());
    EXPECT_DOUBLE_EQ(blunt.end_section, 1.0);
    EXPECT_NEAR(blunt.end_step / diameter, 0.414, 5e-4);
    EXPECT_TRUE(blunt.ends_in_more_than_a_pair());
    EXPECT_DOUBLE_EQ(blunt.even_end(), 1.0);
}

TEST(Taper, FewerPairsLeaveMoreAtTheEnd) {
    const auto taper = taper_schedule(12, 3, millimetres(100.0), diameter);
    ASSERT_EQ(taper.drops.size(), 3U);
    EXPECT_NEAR(taper.drops[0].from_end.si(), 0.075, 1e-12);
    EXPECT_NEAR(taper.end_section, 0.5, 1e-12);
    EXPECT_NEAR(taper.end_step / diameter, 0.2247449, 5e-7); // sqrt(1.5) - 1
    EXPECT_TRUE(taper.ends_in_more_than_a_pair());
    EXPECT_NEAR(taper.even_end(), 0.4, 1e-12);
}

TEST(Taper, AnyEvenNumberOfStrands) {
    for (int strands = 4; strands <= most_strands; strands += 2) {
        const int pairs = strands / 2 - 1;
        const auto taper = taper_schedule(strands, pairs, metres(0.3), diameter);
        ASSERT_EQ(static_cast<int>(taper.drops.size()), pairs);
        EXPECT_NEAR(taper.end_section, 2.0 / strands, 1e-12);
        Length steps = taper.end_step;
        for (const PairDrop& drop : taper.drops) {
            steps += drop.step;
        }
        EXPECT_NEAR(steps / diameter, 0.41421356, 5e-9) << strands; // all of them make sqrt(2) - 1
    }
}

TEST(Taper, LooserPackingMakesSmallerSteps) {
    EXPECT_NEAR(taper_schedule(12, 0, Length(), diameter, 0.5).end_step / diameter, 0.2247449,
                5e-7);
}

} // namespace
} // namespace libsplice
