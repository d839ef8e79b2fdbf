// The rule "one size up when the stiff core is given up", against its arithmetic.
#include "libsplice/mechanics/rope/equal_stretch.h"

#include <gtest/gtest.h>

#include <cmath>

namespace libsplice::testing {
namespace {

// 0.6 % and 2.5 % at a fifth of the strength, READ.
const StretchCurve hmpe = StretchCurve::line({0.2, 0.006});
const StretchCurve polyester = StretchCurve::line({0.2, 0.025});

TEST(EqualStretch, RatioOfStiffnessIsTwoPointEightNineTimesTheStrengths) {
    // 5 mm HMPE against 6 mm polyester: (33.3/8) (25/36) r, r the strengths at one diameter.
    for (const double r : {1.0, 1.5, 2.0}) {
        const Force six = newtons(8000.0);
        const Force five = six * (r * 25.0 / 36.0);
        const Force load = newtons(600.0);
        const double ratio =
            stiffness(load, hmpe.at(load / five)) / stiffness(load, polyester.at(load / six));
        EXPECT_NEAR(ratio, 2.8935 * r, 1e-4 * r) << r;
    }
}

TEST(EqualStretch, PolyesterForHmpeIsTenToFourteenMillimetres) {
    // 6 sqrt(2.8) = 10.04 and 6 sqrt(5.8) = 14.45: 8000 N times the ratio is needed.
    const auto size = [](double ratio) {
        const Force load = newtons(600.0);
        const double strain = polyester.at(600.0 / 8000.0) / ratio;
        const auto needed = strength_for_stretch(polyester, load, strain);
        return size_for_strength(millimetres(6.0), newtons(8000.0), *needed).si() * 1000.0;
    };
    EXPECT_NEAR(size(2.8), 10.0399, 1e-4);
    EXPECT_NEAR(size(5.8), 14.4499, 1e-4);
    EXPECT_NEAR(size(1.0), 6.0, 1e-12);
}

TEST(EqualStretch, FollowsACurveThatBends) {
    // 0.7 % is reached at 20 %, so the strength is five times the load.
    const auto curve = StretchCurve::through({{0.1, 0.0046}, {0.2, 0.0070}, {0.3, 0.0096}});
    EXPECT_NEAR(strength_for_stretch(curve, newtons(600.0), 0.0070)->si(), 3000.0, 1e-6);
    EXPECT_FALSE(strength_for_stretch(curve, newtons(600.0), 0.02).has_value());
}

} // namespace
} // namespace libsplice::testing
