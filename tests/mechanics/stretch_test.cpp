// Stretch as a straight line through one printed point, and the reference tension.
#include "libsplice/mechanics/stretch.h"

#include <gtest/gtest.h>

namespace libsplice {
namespace {

constexpr StretchCurve polyester{0.025, 0.2};
constexpr StretchCurve hmpe{0.006, 0.2};

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
} // namespace libsplice
