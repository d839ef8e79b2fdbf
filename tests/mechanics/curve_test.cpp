// Chains of points: even spacing, closest approach, and which stretches come near each other.
#include "libsplice/mechanics/knots/near_strands.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace libsplice::testing {
namespace {

TEST(Curve, IsSpacedEvenlyWithItsEndsKept) {
    const Curve corner{{{0, 0, 0}, {3, 0, 0}, {3, 1, 0}}, false};
    const Curve even = respaced(corner, 0.5);
    ASSERT_EQ(even.points.size(), 9U);
    EXPECT_EQ(even.points.front(), corner.points.front());
    EXPECT_EQ(even.points.back(), corner.points.back());
    EXPECT_NEAR(even.points[7].y, 0.5, 1e-12);
    EXPECT_NEAR(length_of(even), 4.0, 1e-12);
    EXPECT_NEAR(taken_up(even), 4.0 - std::sqrt(10.0), 1e-12);
}

TEST(Curve, ClosedOneGoesOnToItsFirstPoint) {
    const Curve square{{{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}}, true};
    EXPECT_EQ(square.segments(), 4U);
    EXPECT_NEAR(length_of(square), 4.0, 1e-12);
    EXPECT_EQ(respaced(square, 0.25).points.size(), 16U);
}

TEST(Approach, BetweenSegments) {
    const auto crossing = approach({-1, 0, 0}, {1, 0, 0}, {0, -1, 2}, {0, 3, 2});
    EXPECT_NEAR(crossing.distance, 2.0, 1e-12);
    EXPECT_NEAR(crossing.on_first, 0.5, 1e-12);
    EXPECT_NEAR(crossing.on_second, 0.25, 1e-12);
    const auto end_to_end = approach({0, 0, 0}, {1, 0, 0}, {4, 4, 0}, {4, 8, 0});
    EXPECT_NEAR(end_to_end.distance, 5.0, 1e-12);
    const auto side_by_side = approach({0, 0, 0}, {2, 0, 0}, {1, 3, 0}, {9, 3, 0});
    EXPECT_NEAR(side_by_side.distance, 3.0, 1e-12);
}

// Every pair that lies within reach is among those found, and none twice.
TEST(NearPairs, MissNone) {
    for (const bool closed : {false, true}) {
        Curve curve{{}, closed};
        for (int i = 0; i < 150; ++i) {
            const double t = 0.11 * i;
            curve.points.push_back(
                {std::sin(2.3 * t) * 2.0, std::cos(3.1 * t) * 2.0, std::sin(1.7 * t)});
        }
        constexpr double reach = 0.6;
        constexpr std::size_t apart = 5;
        const auto pairs = near_pairs(curve, reach, apart);
        EXPECT_TRUE(std::ranges::is_sorted(pairs));
        EXPECT_EQ(std::ranges::adjacent_find(pairs), pairs.end());
        std::size_t near = 0;
        for (std::uint32_t i = 0; i < curve.segments(); ++i) {
            for (auto j = static_cast<std::uint32_t>(i + apart); j < curve.segments(); ++j) {
                const auto gap = approach(curve.begin_of(i), curve.end_of(i), curve.begin_of(j),
                                          curve.end_of(j));
                const bool round = closed && i + curve.segments() - j < apart;
                if (gap.distance < reach && !round) {
                    ++near;
                    EXPECT_TRUE(std::ranges::binary_search(pairs, NearPair{i, j}));
                }
            }
        }
        EXPECT_GT(near, 50U);
    }
}

} // namespace
} // namespace libsplice::testing
