// The normal law and limits read as spreads.
#include "libsplice/mechanics/spread.h"

#include <gtest/gtest.h>

#include <cmath>

namespace libsplice {
namespace {

TEST(Spread, QuantilesAreThoseOfTheNormalTable) {
    EXPECT_NEAR(normal_quantile(0.99), 2.326347874, 5e-10);
    EXPECT_NEAR(normal_quantile(0.975), 1.959963985, 5e-10);
    EXPECT_NEAR(normal_quantile(0.95), 1.644853627, 5e-10);
    EXPECT_NEAR(normal_quantile(0.5), 0.0, 1e-12);
    EXPECT_NEAR(normal_quantile(0.01), -2.326347874, 5e-10);
    EXPECT_NEAR(normal_quantile(0.999999), 4.753424309, 5e-9);
}

TEST(Spread, SpareOfTheExample) {
    // Spreads of 6, 4, 3 and 2 mm: the root of 36 + 16 + 9 + 4 = 65 is 8.062257748 mm; at a risk of
    // 1 % the spare is 18.75561617 mm.
    const double spread = std::sqrt(65.0);
    EXPECT_NEAR(normal_quantile(1.0 - 0.01) * spread, 18.75561617, 5e-9);
}

TEST(Spread, ChanceOutsideCountsBothSides) {
    EXPECT_NEAR(chance_outside(1.959963985, 1.0), 0.05, 1e-10);
    EXPECT_NEAR(chance_outside(3.0, 1.5), 0.0455002639, 5e-11); // two standard deviations
    EXPECT_NEAR(chance_outside(0.0, 1.0), 1.0, 1e-15);
    EXPECT_NEAR(chance_outside(0.006, 0.002), 0.0026997961, 5e-11); // three, in metres
}

TEST(Spread, NoSpreadNeverFallsOutside) {
    EXPECT_EQ(chance_outside(0.0, 0.0), 0.0);
    EXPECT_EQ(chance_outside(1.0, 0.0), 0.0);
}

TEST(Spread, LimitsAreRectangular) {
    EXPECT_NEAR(rectangular_spread(3.0), 1.732050808, 5e-10);
    EXPECT_EQ(rectangular_spread(0.0), 0.0);
}

} // namespace
} // namespace libsplice
