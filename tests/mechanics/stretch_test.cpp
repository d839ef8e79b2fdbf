// Load-elongation curves through printed points, and the reference tension.
#include "libsplice/mechanics/rope/stretch.h"

#include <gtest/gtest.h>

namespace libsplice::testing {
namespace {

const StretchCurve polyester = StretchCurve::line({0.2, 0.025});
const StretchCurve hmpe = StretchCurve::line({0.2, 0.006});
const StretchCurve three_points =
    StretchCurve::through({{0.1, 0.0046}, {0.2, 0.0070}, {0.3, 0.0096}});

TEST(Stretch, LineRunsThroughThePrintedPoint) {
    EXPECT_NEAR(polyester.at(0.2), 0.025, 1e-15);
    EXPECT_NEAR(polyester.at(0.1), 0.0125, 1e-15);
    EXPECT_NEAR(polyester.at(0.0), 0.0, 1e-15);
}

TEST(Stretch, EightMetresAt600Newtons) {
    // 0.6/8 = 0.075 of the strength, times 0.025/0.2 is 0.9375 %: 75.0 mm of 8 m.
    const auto longer_by = [](const StretchCurve& curve, double strength) {
        const double strain = curve.at(newtons(600.0) / newtons(strength));
        return (length_at(metres(8.0), 0.0, strain) - metres(8.0)).si() * 1000.0;
    };
    EXPECT_NEAR(longer_by(polyester, 8000.0), 75.0, 0.001);
    EXPECT_NEAR(longer_by(polyester, 5556.0), 108.0, 0.01);
    EXPECT_NEAR(longer_by(hmpe, 10000.0), 14.4, 0.001);
}

TEST(Stretch, PowerRunsThroughBothPoints) {
    // 0.46 % at 10 %, 0.96 % at 30 %: m = ln(0.96/0.46)/ln 3 = 0.6696691841; at 20 % 0.46 x 2^m.
    const auto curve = StretchCurve::power({0.1, 0.0046}, {0.3, 0.0096});
    EXPECT_NEAR(curve.at(0.1), 0.0046, 1e-15);
    EXPECT_NEAR(curve.at(0.3), 0.0096, 1e-15);
    EXPECT_NEAR(curve.at(0.2), 0.007317257581, 1e-12);
    EXPECT_NEAR(curve.at(0.05), 0.0028917937858, 1e-12);
    EXPECT_NEAR(curve.at(0.0), 0.0, 1e-15);
    EXPECT_TRUE(curve.reaches(0.9));
    EXPECT_NEAR(*curve.load_at(0.0096), 0.3, 1e-12);
    // With points on a line through nothing it is that line.
    EXPECT_NEAR(StretchCurve::power({0.1, 0.01}, {0.3, 0.03}).at(0.25), 0.025, 1e-12);
}

TEST(Stretch, SmoothCurveRunsThroughItsPoints) {
    EXPECT_NEAR(three_points.at(0.1), 0.0046, 1e-15);
    EXPECT_NEAR(three_points.at(0.2), 0.0070, 1e-15);
    EXPECT_NEAR(three_points.at(0.3), 0.0096, 1e-15);
    EXPECT_NEAR(three_points.at(0.0), 0.0, 1e-15);
    // Slopes at equal steps are the harmonic means 2/(1/0.046 + 1/0.024) and 2/(1/0.024 + 1/0.026),
    // 0.046 and 0.026 at the ends; halfway it is the mean of two neighbours and an eighth of the
    // step times the difference of their slopes.
    EXPECT_NEAR(three_points.at(0.05), 0.0023 + 0.0125 * (0.046 - 0.0315428571), 1e-11);
    EXPECT_NEAR(three_points.at(0.25), 0.0083 + 0.0125 * (0.02496 - 0.026), 1e-11);
}

TEST(Stretch, SmoothCurveNeverFalls) {
    const auto knee = StretchCurve::through({{0.1, 0.001}, {0.11, 0.05}, {0.5, 0.051}, {0.6, 0.2}});
    double before = 0.0;
    for (int i = 1; i <= 600; ++i) {
        const double strain = knee.at(i / 1000.0);
        EXPECT_GE(strain, before) << i;
        before = strain;
    }
}

TEST(Stretch, SmoothCurveStopsAtItsLastPoint) {
    EXPECT_TRUE(three_points.reaches(0.3));
    EXPECT_FALSE(three_points.reaches(0.300001));
    EXPECT_FALSE(three_points.load_at(0.0097).has_value());
    EXPECT_TRUE(polyester.reaches(5.0));
}

TEST(Stretch, LoadOfAnElongationIsTheWayBack) {
    for (const double load : {0.01, 0.08, 0.15, 0.2, 0.29}) {
        for (const auto& curve : {three_points, polyester}) {
            EXPECT_NEAR(*curve.load_at(curve.at(load)), load, 1e-12);
        }
    }
    EXPECT_NEAR(*three_points.load_at(0.0), 0.0, 1e-12);
}

TEST(Stretch, PointsMustRise) {
    const auto all = [](std::vector<StretchPoint> points) {
        return rises(points);
    };
    EXPECT_TRUE(all({{0.1, 0.01}, {0.2, 0.02}}));
    EXPECT_FALSE(all({{0.1, 0.01}, {0.1, 0.02}}));
    EXPECT_FALSE(all({{0.1, 0.02}, {0.2, 0.02}}));
    EXPECT_FALSE(all({{0.2, 0.02}, {0.1, 0.03}}));
    EXPECT_FALSE(all({{0.1, 0.0}}));
    EXPECT_FALSE(all({{0.0, 0.01}}));
}

TEST(Stretch, LengthGoesBackAndForth) {
    // 10.25 m at 2.5 % is 10 m unstretched.
    EXPECT_NEAR(length_at(metres(10.25), 0.025, 0.0).si(), 10.0, 1e-12);
    EXPECT_NEAR(length_at(metres(10.0), 0.0, 0.025).si(), 10.25, 1e-12);
    EXPECT_NEAR(length_at(length_at(metres(7.3), 0.004, 0.031), 0.031, 0.004).si(), 7.3, 1e-12);
    EXPECT_NEAR(length_at(metres(7.3), 0.02, 0.02).si(), 7.3, 1e-15);
}

TEST(Stretch, ReferenceTensionIsTheSquareOverEight) {
    // 5 mm: 25/8 = 3.125 kgf = 30.64578125 N; 8 mm: 8 kgf; 12.7 mm: 20.16125 kgf.
    EXPECT_NEAR(reference_tension(millimetres(5.0)).si(), 30.64578125, 1e-9);
    EXPECT_NEAR(reference_tension(millimetres(8.0)).si(), 78.4532, 1e-9);
    EXPECT_NEAR(reference_tension(millimetres(12.7)).si(), 197.7143223, 1e-6);
    EXPECT_NEAR(reference_tension({}).si(), 0.0, 1e-15);
}

} // namespace
} // namespace libsplice::testing
