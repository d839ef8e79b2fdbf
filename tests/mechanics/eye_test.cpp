// The eye as a teardrop: geometry worked out beforehand, its inverse and its limits.
#include "libsplice/mechanics/rope/eye.h"

#include <gtest/gtest.h>

#include <array>
#include <numbers>

namespace libsplice::testing {
namespace {

constexpr double degrees_per_radian = 180.0 / std::numbers::pi;

struct EyeCase {
    double pin;
    double rope;
    double throat_distance;
    double leg_offset;
    double angle; ///< degrees
    double rope_round;
};

// All in millimetres.
constexpr std::array eye_cases{
    EyeCase{12, 5, 30, 2.5, 23.27429036, 87.91446435},
    EyeCase{8, 3, 25, 1.5, 18.50441465, 67.92222278},
    EyeCase{40, 10, 120, 5, 19.25635005, 321.8887866},
    EyeCase{12, 5, 30, 0, 32.91849926, 89.12838475},
    // A straight leg of 4 beside a radius of 3 and a distance of 5: the angle is twice asin(3/5),
    // the rope 3 (pi + 1.287002218) + 8. First a thread round a pin, then a rope with no pin.
    EyeCase{6, 0, 5, 0, 73.73979529, 21.28578461},
    EyeCase{0, 6, 5, 0, 73.73979529, 21.28578461},
    // A soft eye whose legs touch has parallel legs: half a circle of the rope and two legs,
    // pi 2.5 + 2 40.
    EyeCase{0, 5, 40, 2.5, 0, 87.85398163},
};

Teardrop eye(const EyeCase& given) {
    const auto shape =
        teardrop_eye(millimetres(given.pin), millimetres(given.rope),
                     millimetres(given.throat_distance), millimetres(given.leg_offset));
    EXPECT_TRUE(shape) << given.pin << ' ' << given.rope;
    return shape.value_or(Teardrop{});
}

TEST(Eye, RopeRoundAndAngleAreTheGeometry) {
    for (const auto& given : eye_cases) {
        const auto shape = eye(given);
        EXPECT_NEAR(shape.rope_round.si() * 1000.0, given.rope_round, 5e-8) << given.rope_round;
        EXPECT_NEAR(shape.throat_angle.si() * degrees_per_radian, given.angle, 2e-8)
            << given.rope_round;
    }
}

TEST(Eye, InverseFindsTheThroat) {
    for (const auto& given : eye_cases) {
        const auto distance =
            throat_distance(millimetres(given.pin), millimetres(given.rope),
                            millimetres(given.rope_round), millimetres(given.leg_offset));
        ASSERT_TRUE(distance) << given.rope_round;
        EXPECT_NEAR(distance->si() * 1000.0, given.throat_distance, 1e-7) << given.rope_round;
    }
    const auto distance =
        throat_distance(millimetres(12.0), millimetres(5.0), millimetres(120.0), millimetres(2.5));
    ASSERT_TRUE(distance);
    EXPECT_NEAR(distance->si() * 1000.0, 46.25763683, 5e-9);
}

TEST(Eye, AngleOf20DegreesIsRadiusOverSine) {
    // 7 / sin 10 degrees = 40.31139338.
    EXPECT_NEAR(eye({10, 4, 40.31139338, 0, 0, 0}).throat_angle.si() * degrees_per_radian, 20.0,
                1e-7);
}

TEST(Eye, SeizedCloseIsAWholeTurn) {
    // pi (40 + 8) = 150.7964474, legs opposite one another.
    const auto shape = eye({40, 8, 24, 0, 0, 0});
    EXPECT_NEAR(shape.rope_round.si() * 1000.0, 150.7964474, 5e-8);
    EXPECT_NEAR(shape.throat_angle.si() * degrees_per_radian, 180.0, 1e-6);
}

TEST(Eye, ThinRopeIsTheThreadRoundThePin) {
    EXPECT_NEAR(eye({6, 1e-9, 5, 0.5e-9, 0, 0}).rope_round.si() * 1000.0, 21.28578461, 1e-7);
}

TEST(Eye, NearerThanTheCentrelineIsNoEye) {
    const auto at = [](double distance) {
        return teardrop_eye(millimetres(12.0), millimetres(5.0), millimetres(distance),
                            millimetres(2.5));
    };
    EXPECT_FALSE(at(8.499)); // the radius is 8.5
    EXPECT_TRUE(at(8.501));
    EXPECT_FALSE(at(-30.0));
    EXPECT_FALSE(teardrop_eye({}, {}, millimetres(10.0), {}));
    EXPECT_FALSE(
        teardrop_eye(millimetres(12.0), millimetres(5.0), millimetres(30.0), millimetres(-1.0)));
}

TEST(Eye, TooLittleRopeDoesNotCloseRound) {
    // The tightest with touching legs: the throat at the radius of 8.5.
    const auto tightest = eye({12, 5, 8.5, 2.5, 0, 0}).rope_round;
    const auto with = [](Length rope) {
        return throat_distance(millimetres(12.0), millimetres(5.0), rope, millimetres(2.5));
    };
    EXPECT_FALSE(with(tightest - millimetres(0.01)));
    EXPECT_TRUE(with(tightest + millimetres(0.01)));
    EXPECT_FALSE(throat_distance({}, {}, millimetres(100.0), {}));
}

TEST(Eye, LongerEyeTakesMoreRopeAndOpensLess) {
    auto before = eye({12, 5, 9, 2.5, 0, 0});
    for (double distance = 10.0; distance < 300.0; distance *= 1.1) {
        const auto longer = eye({12, 5, distance, 2.5, 0, 0});
        EXPECT_GT(longer.rope_round, before.rope_round) << distance;
        EXPECT_LT(longer.throat_angle, before.throat_angle) << distance;
        before = longer;
    }
}

TEST(Eye, TwiceTheSizeIsTwiceTheRope) {
    for (const auto& given : eye_cases) {
        const auto twice = eye({2.0 * given.pin, 2.0 * given.rope, 2.0 * given.throat_distance,
                                2.0 * given.leg_offset, 0, 0});
        EXPECT_NEAR(twice.rope_round.si() * 1000.0, 2.0 * given.rope_round, 1e-7);
    }
}

} // namespace
} // namespace libsplice::testing
