// Distances, lengths and evenly spaced positions, in the plane and in space.
#include "libsplice/mechanics/routes/polyline.h"

#include "tests/mechanics/ways.h"

#include <cmath>
#include <numbers>

namespace libsplice::testing {
namespace {

TEST(Polyline, IsMeasuredInAllThreeDirections) {
    EXPECT_NEAR(distance_between(at(1, 2, 3), at(3, 5, 9)).si(), 0.007, 1e-15); // 2, 3, 6
    EXPECT_NEAR(polyline_length(std::vector{at(0, 0), at(30, 40), at(30, 40, 12)}).si(), 0.062,
                1e-15);
    EXPECT_EQ(polyline_length(std::vector{at(5, 5)}).si(), 0.0);
    EXPECT_EQ(polyline_length({}).si(), 0.0);
}

TEST(Polyline, EvenSpacingGoesRoundTheCorners) {
    // 120 mm of edge, five eyelets: 30 mm apart along it.
    const auto eyelets = spaced_evenly(std::vector{at(0, 0), at(40, 0), at(40, 80)}, 5);
    const std::vector expected{at(0, 0), at(30, 0), at(40, 20), at(40, 50), at(40, 80)};
    ASSERT_EQ(eyelets.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        EXPECT_NEAR(distance_between(eyelets[i], expected[i]).si(), 0.0, 1e-15) << i;
    }
}

TEST(Polyline, EvenSpacingEndsAtTheEnds) {
    const std::vector edge{at(0.1, 0.7, 0.3), at(12.7, 33.3, 9.9), at(21.3, 99.1, 7.7)};
    for (std::size_t count = 2; count < 60; ++count) {
        const auto eyelets = spaced_evenly(edge, count);
        ASSERT_EQ(eyelets.size(), count);
        EXPECT_EQ(eyelets.front(), edge.front());
        EXPECT_EQ(eyelets.back(), edge.back());
    }
}

TEST(Polyline, EvenSpacingMeetsLegsOfNoLength) {
    const auto on_one_spot = spaced_evenly(std::vector{at(7, 8), at(7, 8)}, 4);
    ASSERT_EQ(on_one_spot.size(), 4U);
    for (const Position& eyelet : on_one_spot) {
        EXPECT_EQ(eyelet, at(7, 8));
    }
    const auto eyelets = spaced_evenly(std::vector{at(0, 0), at(0, 0), at(20, 0), at(20, 0)}, 3);
    EXPECT_NEAR(distance_between(eyelets[1], at(10, 0)).si(), 0.0, 1e-15);
}

TEST(Polyline, EvenSpacingFollowsACurve) {
    // A quarter circle of 100 mm in 1000 legs: every eyelet lies on it, 15 degrees from the last.
    std::vector<Position> curve;
    for (int i = 0; i <= 1000; ++i) {
        const double angle = std::numbers::pi / 2.0 * i / 1000.0;
        curve.push_back(at(100.0 * std::cos(angle), 100.0 * std::sin(angle), 30.0));
    }
    const auto eyelets = spaced_evenly(curve, 7);
    ASSERT_EQ(eyelets.size(), 7U);
    for (std::size_t i = 0; i < eyelets.size(); ++i) {
        const double angle = std::numbers::pi / 12.0 * static_cast<double>(i);
        const auto expected = at(100.0 * std::cos(angle), 100.0 * std::sin(angle), 30.0);
        EXPECT_NEAR(distance_between(eyelets[i], expected).si(), 0.0, 1e-7) << i;
    }
}

TEST(Polyline, DeflectionIsTheChangeOfCourse) {
    const auto turned = [](const Position& after) {
        return deflection(at(0, 0), at(10, 0), after).angle.si();
    };
    EXPECT_NEAR(turned(at(25, 0)), 0.0, 1e-15);
    EXPECT_NEAR(turned(at(10, 0, 7)), std::numbers::pi / 2.0, 1e-15);
    EXPECT_NEAR(turned(at(13, -4)), 0.9272952180, 1e-10); // a 3-4-5 triangle
    EXPECT_NEAR(turned(at(2, 0)), std::numbers::pi, 1e-15);
}

TEST(Polyline, DeflectionTurnsAboutItsAxis) {
    const auto left = deflection(at(0, 0), at(10, 0), at(13, 4)).axis;
    EXPECT_NEAR(left[2], 0.8, 1e-15);
    const auto right = deflection(at(0, 0), at(10, 0), at(13, -4)).axis;
    EXPECT_NEAR(right[2], -0.8, 1e-15);
    EXPECT_EQ(left[0], 0.0);
    EXPECT_EQ(left[1], 0.0);
}

} // namespace
} // namespace libsplice::testing
