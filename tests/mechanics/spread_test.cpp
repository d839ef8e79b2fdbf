// The normal law and limits read as spreads.
#include "libsplice/mechanics/chance/spread.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace libsplice::testing {
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

// Take-ups of six splices made alike, in rope diameters.
constexpr std::array take_ups{6.8, 7.4, 7.1, 6.5, 7.7, 7.0};

TEST(Sample, MeanAndSpreadOfTheExample) {
    const Sample sample = sample_of(take_ups);
    EXPECT_EQ(sample.count, 6U);
    EXPECT_NEAR(sample.mean, 7.083333333, 5e-10);
    EXPECT_NEAR(sample.spread, 0.4262237284, 5e-11);
}

TEST(Sample, OneValueHasNoSpread) {
    const Sample sample = sample_of(std::array{6.5});
    EXPECT_EQ(sample.mean, 6.5);
    EXPECT_EQ(sample.spread, 0.0);
    EXPECT_EQ(sample.count, 1U);
}

TEST(Student, QuantilesAreThoseOfTheTable) {
    EXPECT_NEAR(student_quantile(0.95, 5.0), 2.015048373, 5e-10);
    EXPECT_NEAR(student_quantile(0.975, 5.0), 2.570581836, 5e-10);
    EXPECT_NEAR(student_quantile(0.025, 5.0), -2.570581836, 5e-10);
    EXPECT_NEAR(student_quantile(0.75, 1.0), 1.0, 1e-12); // tan(pi/4)
    EXPECT_NEAR(student_quantile(0.975, 1e9), 1.959963985, 1e-8);
}

TEST(Prediction, OfTheNextSpliceOfTheExample) {
    const Sample sample = sample_of(take_ups);
    EXPECT_NEAR(prediction_limit(sample, 0.95), 8.011009705, 5e-10);
    EXPECT_NEAR(prediction_limit(sample, 0.975) - sample.mean, 1.183429669, 5e-10);
}

TEST(Prediction, ManySplicesAlikeComeToTheNormalLaw) {
    const Sample many{100'000'000, 7.0, 0.5};
    EXPECT_NEAR(prediction_limit(many, 0.99), 7.0 + 0.5 * 2.326347874, 1e-7);
}

// Critical values of Grubbs' test at 5 %, two-sided, as tables print them.
TEST(Outlier, LimitsAreThoseOfTheTable) {
    EXPECT_NEAR(grubbs_limit(3, 0.05), 1.154, 5e-4);
    EXPECT_NEAR(grubbs_limit(6, 0.05), 1.887, 5e-4);
    EXPECT_NEAR(grubbs_limit(10, 0.05), 2.290, 5e-4);
}

TEST(Outlier, IsTheFarthestBeyondTheLimit) {
    EXPECT_EQ(outlier_of(take_ups, 0.05), std::nullopt);
    EXPECT_EQ(outlier_of(std::array{7.0, 7.1, 6.9, 11.0, 7.0, 7.05}, 0.05), std::size_t{3});
    EXPECT_EQ(outlier_of(std::array{7.0, 11.0}, 0.05), std::nullopt); // two cannot tell
    EXPECT_EQ(outlier_of(std::array{7.0, 7.0, 7.0, 7.0}, 0.05), std::nullopt);
}

} // namespace
} // namespace libsplice::testing
