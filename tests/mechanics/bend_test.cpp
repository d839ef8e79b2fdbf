// Wire bent round a pin: the printed points and the curve between them.
#include "libsplice/mechanics/rope/bend.h"

#include <gtest/gtest.h>

#include <array>

namespace libsplice::testing {
namespace {

constexpr std::array points{BendPoint{1.0, 0.50}, BendPoint{4.0, 0.75}, BendPoint{40.0, 0.95}};

TEST(Bend, PrintedPointsAreMet) {
    EXPECT_NEAR(retained_in_bend(points, 1.0).value_or(0.0), 0.50, 1e-15);
    EXPECT_NEAR(retained_in_bend(points, 4.0).value_or(0.0), 0.75, 1e-15);
    EXPECT_NEAR(retained_in_bend(points, 40.0).value_or(0.0), 0.95, 1e-15);
}

TEST(Bend, BetweenThemTheShareRunsWithTheLogarithm) {
    // 2 lies halfway between 1 and 4 by ratio, and so does 12.649110641 between 4 and 40.
    EXPECT_NEAR(retained_in_bend(points, 2.0).value_or(0.0), 0.625, 1e-12);
    EXPECT_NEAR(retained_in_bend(points, 12.649110641).value_or(0.0), 0.85, 1e-9);
}

TEST(Bend, NothingIsSaidOfPinsThinnerThanPrinted) {
    EXPECT_FALSE(retained_in_bend(points, 0.99));
    EXPECT_FALSE(retained_in_bend({}, 5.0));
}

TEST(Bend, LargerPinsKeepNoMoreThanTheLargestPrinted) {
    EXPECT_NEAR(retained_in_bend(points, 400.0).value_or(0.0), 0.95, 1e-15);
}

} // namespace
} // namespace libsplice::testing
