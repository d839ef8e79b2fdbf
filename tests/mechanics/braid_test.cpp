// A braid over a buried tail: the take-up formula against figures worked out for it beforehand.
#include "libsplice/mechanics/rope/braid.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace libsplice::testing {
namespace {

constexpr double radians_per_degree = std::numbers::pi / 180.0;

struct BraidCase {
    double angle;    ///< of the empty braid, degrees
    double constant; ///< K = 2 tan^2
    double share;    ///< sqrt(1 - K)
    double stuffed;  ///< angle over a full-section tail, degrees
};

constexpr std::array braid_cases{
    BraidCase{12.0, 0.09036058382, 0.9537501854, 21.10717},
    BraidCase{15.0, 0.1435935394, 0.9254223147, 26.63388},
    BraidCase{18.0, 0.2111456180, 0.8881747474, 32.35972},
    BraidCase{21.0, 0.2947031948, 0.8398195075, 38.36811},
};

TEST(Braid, ConstantComesFromTheBraidAngle) {
    for (const auto& braid : braid_cases) {
        EXPECT_NEAR(braid_constant(degrees(braid.angle)), braid.constant, 5e-11) << braid.angle;
    }
}

TEST(Braid, LengthOverAFullTailIsTheRatioOfTheTwoAnglesCosines) {
    for (const auto& braid : braid_cases) {
        const auto share = stuffed_share(braid.constant, 1.0);
        ASSERT_TRUE(share) << braid.angle;
        EXPECT_NEAR(*share, braid.share, 1e-10) << braid.angle;
        const double cosines = std::cos(braid.stuffed * radians_per_degree) /
                               std::cos(braid.angle * radians_per_degree);
        EXPECT_NEAR(*share, cosines, 1e-6) << braid.angle;
    }
}

TEST(Braid, LooserPackingTakesUpLess) {
    // K is in proportion to the packing.
    EXPECT_NEAR(braid_constant(degrees(15.0), 0.5), 0.1435935394 / 2.0, 5e-11);
    EXPECT_NEAR(braid_constant(degrees(0.0)), 0.0, 1e-15);
}

TEST(Braid, TakeUpOf48DiametersFullAnd24Tapered) {
    // 15 degrees: the host used is 76.7978069 D for 72 D of tail, 6.664 % more.
    const auto full = host_over({metres(48.0), 1.0, 1.0}, 0.1435935394);
    const auto taper = host_over({metres(24.0), 1.0, 0.0}, 0.1435935394);
    ASSERT_TRUE(full && taper);
    const double host = (*full + *taper).si();
    EXPECT_NEAR(host, 76.7978069, 5e-8);
    EXPECT_NEAR((host - 72.0) / 72.0, 0.06664, 5e-6);
}

TEST(Braid, TaperIsTheIntegralOverItsSection) {
    // Against the sum over many short parts of constant section.
    constexpr int parts = 20000;
    constexpr double constant = 0.2947031948;
    double sum = 0.0;
    for (int i = 0; i < parts; ++i) {
        const double section = 1.0 - 0.8 * (i + 0.5) / parts;
        sum += 1.0 / parts / std::sqrt(1.0 - constant * section);
    }
    const auto host = host_over({metres(1.0), 1.0, 0.2}, constant);
    ASSERT_TRUE(host);
    EXPECT_NEAR(host->si(), sum, 1e-9);
    const auto turned = host_over({metres(1.0), 0.2, 1.0}, constant);
    ASSERT_TRUE(turned);
    EXPECT_NEAR(turned->si(), host->si(), 1e-15);
}

TEST(Braid, FirstOrderIsHalfTheConstantTimesTheSection) {
    const auto host = host_over({metres(1.0), 1.0, 0.0}, 1e-4);
    ASSERT_TRUE(host);
    EXPECT_NEAR(host->si() - 1.0, 0.5 * 1e-4 * 0.5, 2e-9);
}

TEST(Braid, NoConstantOrNoTailIsNoTakeUp) {
    const auto without_constant = host_over({metres(3.0), 1.0, 0.0}, 0.0);
    const auto without_section = host_over({metres(3.0), 0.0, 0.0}, 0.2);
    const auto without_length = host_over({Length(), 1.0, 0.0}, 0.2);
    ASSERT_TRUE(without_constant && without_section && without_length);
    EXPECT_DOUBLE_EQ(without_constant->si(), 3.0);
    EXPECT_DOUBLE_EQ(without_section->si(), 3.0);
    EXPECT_DOUBLE_EQ(without_length->si(), 0.0);
}

TEST(Braid, TailThatDoesNotGoInHasNoLength) {
    EXPECT_FALSE(stuffed_share(1.0, 1.0));
    EXPECT_FALSE(stuffed_share(0.5, 2.0));
    EXPECT_FALSE(stuffed_share(1.2, 1.0));
    // The braid jams at 45 degrees: K = 2 tan^2 of the empty angle, so from 0.4 on (24.1 degrees) a
    // tail of the rope's own size just goes in where 1 - K = (1 + K/2)/2, that is up to K = 0.4.
    EXPECT_TRUE(stuffed_share(0.399, 1.0));
    EXPECT_FALSE(stuffed_share(0.401, 1.0));
    EXPECT_FALSE(host_over({metres(1.0), 1.0, 0.0}, 1.0));
    EXPECT_FALSE(host_over({metres(1.0), 0.0, 1.0}, 1.5));
    EXPECT_TRUE(host_over({metres(1.0), 0.5, 0.0}, 0.5));
}

TEST(Braid, RopeOverASameSizeTailIsRootTwoThicker) {
    EXPECT_NEAR(diameter_over_bury(millimetres(5.0)).si() * 1000.0, 7.071067812, 5e-10);
    EXPECT_NEAR(diameter_over_bury(millimetres(5.0), 0.0).si() * 1000.0, 5.0, 1e-12);
    // Three quarters more section inside: sqrt(1.75) = 1.322875656.
    EXPECT_NEAR(diameter_over_bury(millimetres(8.0), 0.75).si() * 1000.0, 10.58300524, 5e-9);
}

} // namespace
} // namespace libsplice::testing
