// Pairs dropped from a tail: where, what is left, and the steps in the host's diameter.
#include "libsplice/mechanics/rope/taper.h"

#include <gtest/gtest.h>

#include <array>

namespace libsplice::testing {
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
}

TEST(Taper, FewerPairsLeaveMoreAtTheEnd) {
    const auto taper = taper_schedule(12, 3, millimetres(100.0), diameter);
    ASSERT_EQ(taper.drops.size(), 3U);
    EXPECT_NEAR(taper.drops[0].from_end.si(), 0.075, 1e-12);
    EXPECT_NEAR(taper.end_section, 0.5, 1e-12);
    EXPECT_NEAR(taper.end_step / diameter, 0.2247449, 5e-7); // sqrt(1.5) - 1
    EXPECT_TRUE(taper.ends_in_more_than_a_pair());
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

TEST(Taper, TailLiesInStepsFromItsFirstDrop) {
    // 720 mm, the last 240 thinned: full up to the first drop 200 mm before the end, then 40 mm
    // each.
    const auto tail =
        stepped_tail(millimetres(720.0), taper_schedule(12, 5, millimetres(240.0), diameter));
    ASSERT_EQ(tail.size(), 6U);
    EXPECT_NEAR(tail[0].length.si(), 0.520, 1e-12);
    EXPECT_DOUBLE_EQ(tail[0].section_at_start, 1.0);
    constexpr std::array sections{0.833333, 0.666667, 0.5, 0.333333, 0.166667};
    for (std::size_t i = 0; i < sections.size(); ++i) {
        EXPECT_NEAR(tail[i + 1].length.si(), 0.040, 1e-12) << i;
        EXPECT_NEAR(tail[i + 1].section_at_start, sections.at(i), 5e-7) << i;
        EXPECT_EQ(tail[i + 1].section_at_end, tail[i + 1].section_at_start) << i;
    }
}

TEST(Taper, ABluntTailIsOnePart) {
    const auto tail = stepped_tail(metres(0.5), taper_schedule(12, 0, Length(), diameter));
    ASSERT_EQ(tail.size(), 1U);
    EXPECT_NEAR(tail[0].length.si(), 0.5, 1e-12);
    EXPECT_DOUBLE_EQ(tail[0].section_at_end, 1.0);
}

struct StepCase {
    double constant;
    double take_up; ///< of 72 D, the last 24 D in six steps of 4 D; in D
};

// 52 D in full and 4 D each with 10, 8, 6, 4 and 2 of 12 strands. With K = 0.135,
//   1/root(1 - 0.135) = 1.0752067, 1.0614898, 1.0482848, 1.0355607, 1.0232890, 1.0114435:
//   52 x 1.0752067 + 4 x 5.1800679 - 72 = 4.631018.
// With K = 0.25: 1.1547005, 1.1239030, 1.0954451, 1.0690450, 1.0444659, 1.0215078:
//   52 x 1.1547005 + 4 x 5.3543668 - 72 = 9.461895.
// K = 0.10 and 0.18 in the same way.
constexpr std::array step_cases{StepCase{0.135, 4.631018}, StepCase{0.25, 9.461895},
                                StepCase{0.10, 3.337120}, StepCase{0.18, 6.407226}};

TEST(Taper, TakeUpIsTheSumOverItsSteps) {
    const auto tail = stepped_tail(metres(72.0), taper_schedule(12, 5, metres(24.0), metres(1.0)));
    for (const auto& step : step_cases) {
        const auto take_up = take_up_over(tail, step.constant);
        ASSERT_TRUE(take_up) << step.constant;
        EXPECT_NEAR(take_up->si(), step.take_up, 1e-6) << step.constant;
    }
}

TEST(Taper, ManyStepsComeNearAnEvenTaper) {
    // Each step keeps its section to its end, so the steps lie above the even line: half a pair
    // more on average, and less of it the more strands there are.
    double before = 1.0;
    const auto even = take_up_over(tapered_tail(metres(72.0), metres(24.0)), 0.25);
    for (int strands = 8; strands <= most_strands; strands += 4) {
        const auto schedule = taper_schedule(strands, strands / 2 - 1, metres(24.0), metres(1.0));
        const auto stepped = take_up_over(stepped_tail(metres(72.0), schedule), 0.25);
        ASSERT_TRUE(even && stepped);
        const double more = *stepped / *even - 1.0;
        EXPECT_GT(more, 0.0) << strands;
        EXPECT_LT(more, before) << strands;
        before = more;
    }
}

TEST(Taper, LooserPackingMakesSmallerSteps) {
    EXPECT_NEAR(taper_schedule(12, 0, Length(), diameter, 0.5).end_step / diameter, 0.2247449,
                5e-7);
}

} // namespace
} // namespace libsplice::testing
