// Lengths and forces as text. Expected values are hand arithmetic with 1 in = 25.4 mm.
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include <gtest/gtest.h>

#include <limits>
#include <string>

namespace libsplice::testing {
namespace {

std::string metric(double millimetre_count) {
    return show_length(millimetres(millimetre_count), UnitSystem::metric);
}

std::string imperial(double inch_count) {
    return show_length(Length(inch_count * 0.0254), UnitSystem::imperial);
}

TEST(ShowLength, MetricBelowOneMetre) {
    EXPECT_EQ(metric(875.0), "875 mm");
    EXPECT_EQ(metric(0.0), "0 mm");
    EXPECT_EQ(metric(0.4), "0 mm");
    EXPECT_EQ(metric(0.5), "1 mm");
    EXPECT_EQ(metric(999.4), "999 mm");
}

TEST(ShowLength, MetricFromOneMetreOn) {
    EXPECT_EQ(metric(16'480.0), "16.480 m");
    EXPECT_EQ(metric(1000.0), "1.000 m");
    EXPECT_EQ(metric(999.5), "1.000 m"); // rounding carries into the other form
    EXPECT_EQ(metric(1'234'567.4), "1234.567 m");
    EXPECT_EQ(metric(1999.6), "2.000 m");
}

TEST(ShowLength, MetricWithMinus) {
    EXPECT_EQ(metric(-875.0), "-875 mm");
    EXPECT_EQ(metric(-16'480.0), "-16.480 m");
    EXPECT_EQ(metric(-0.4), "0 mm");
}

TEST(ShowLength, ImperialBelowOneFoot) {
    EXPECT_EQ(imperial(3.0 + 7.0 / 16.0), "3 7/16 in");
    EXPECT_EQ(imperial(0.0), "0 in");
    EXPECT_EQ(imperial(3.0), "3 in");
    EXPECT_EQ(imperial(0.5), "1/2 in");
    EXPECT_EQ(imperial(0.25), "1/4 in");
    EXPECT_EQ(imperial(0.125), "1/8 in");
    EXPECT_EQ(imperial(0.0625), "1/16 in");
    EXPECT_EQ(imperial(11.0 + 15.0 / 16.0), "11 15/16 in");
    EXPECT_EQ(imperial(0.02), "0 in");
}

TEST(ShowLength, ImperialFromOneFootOn) {
    EXPECT_EQ(imperial(54.0 * 12.0 + 13.0 / 16.0), "54 ft 0 13/16 in");
    EXPECT_EQ(imperial(12.0), "1 ft 0 in");
    EXPECT_EQ(imperial(150.0), "12 ft 6 in");
    EXPECT_EQ(imperial(23.5), "1 ft 11 1/2 in");
}

TEST(ShowLength, ImperialRoundingCarries) {
    EXPECT_EQ(imperial(2.97), "3 in");
    EXPECT_EQ(imperial(11.97), "1 ft 0 in");
    EXPECT_EQ(imperial(11.0 + 31.0 / 32.0), "1 ft 0 in");
    EXPECT_EQ(imperial(23.98), "2 ft 0 in");
    EXPECT_EQ(imperial(11.96), "11 15/16 in");
}

TEST(ShowLength, ImperialWithMinus) {
    EXPECT_EQ(imperial(-3.4375), "-3 7/16 in");
    EXPECT_EQ(imperial(-150.0), "-12 ft 6 in");
    EXPECT_EQ(imperial(-0.01), "0 in");
}

TEST(ShowLength, CanBeReadBack) {
    for (int sixteenths = -500; sixteenths <= 500; ++sixteenths) {
        const Length length(sixteenths * 0.0254 / 16.0);
        const auto read = read_length(show_length(length, UnitSystem::imperial));
        ASSERT_TRUE(read) << read.error().text;
        EXPECT_EQ(to_nanometres(read->length), to_nanometres(length));
    }
    for (int count = -1500; count <= 1500; ++count) {
        const auto read = read_length(metric(count));
        ASSERT_TRUE(read) << read.error().text;
        EXPECT_EQ(to_nanometres(read->length), Nanometres{count} * 1'000'000);
    }
}

TEST(ShowFine, TenthsAndThousandths) {
    EXPECT_EQ(show_fine(millimetres(3.4), UnitSystem::metric), "3.4 mm");
    EXPECT_EQ(show_fine(millimetres(3.4), UnitSystem::imperial),
              "0.134 in"); // 3.4 / 25.4 = 0.13386
    EXPECT_EQ(show_fine(millimetres(12.0), UnitSystem::metric), "12.0 mm");
    EXPECT_EQ(show_fine(millimetres(0.04), UnitSystem::metric), "0.0 mm");
    EXPECT_EQ(show_fine(millimetres(9.96), UnitSystem::metric), "10.0 mm");
    EXPECT_EQ(show_fine(millimetres(-3.4), UnitSystem::metric), "-3.4 mm");
    EXPECT_EQ(show_fine(millimetres(-0.01), UnitSystem::metric), "0.0 mm");
    EXPECT_EQ(show_fine(millimetres(38.1), UnitSystem::imperial), "1.500 in");
}

TEST(ShowForce, NewtonsWithKilogramsForceOrPounds) {
    const Force force = newtons(44.129925); // 4.5 kgf, 9.92 lbf
    EXPECT_EQ(show_force(force, UnitSystem::metric), "44 N (4.5 kgf)");
    EXPECT_EQ(show_force(force, UnitSystem::imperial), "10 lbf");
    EXPECT_EQ(show_force(newtons(588.399), UnitSystem::metric), "588 N (60 kgf)");
    EXPECT_EQ(show_force(newtons(0.0), UnitSystem::metric), "0 N (0 kgf)");
}

std::string metres_text(Nanometres count) {
    std::string text = ">";
    append_metres(text, count);
    return text;
}

TEST(AppendMetres, IsExact) {
    EXPECT_EQ(metres_text(6'475'000'000), ">6.475");
    EXPECT_EQ(metres_text(87'914'460), ">0.08791446");
    EXPECT_EQ(metres_text(1), ">0.000000001");
    EXPECT_EQ(metres_text(0), ">0");
    EXPECT_EQ(metres_text(10'000'000'000), ">10");
    EXPECT_EQ(metres_text(-5'000'000), ">-0.005");
    EXPECT_EQ(metres_text(-12'000'000'000), ">-12");
    EXPECT_EQ(metres_text(std::numeric_limits<Nanometres>::max()), ">9223372036.854775807");
    EXPECT_EQ(metres_text(std::numeric_limits<Nanometres>::min()), ">-9223372036.854775808");
}

TEST(ShowNumber, DropsTrailingZeros) {
    EXPECT_EQ(show_number(0.935, 3), "0.935");
    EXPECT_EQ(show_number(2.5, 3), "2.5");
    EXPECT_EQ(show_number(100.0, 2), "100");
    EXPECT_EQ(show_number(100.0, 0), "100");
    EXPECT_EQ(show_number(0.996, 2), "1");
    EXPECT_EQ(show_number(0.0, 4), "0");
    EXPECT_EQ(show_number(-0.001, 2), "0");
    EXPECT_EQ(show_number(-1.25, 2), "-1.25");
    EXPECT_EQ(show_number(1e300, 2).size(), 301U);
}

TEST(ShowNumberDeathTest, IsForFiniteNumbers) {
    EXPECT_DEATH((void)show_number(std::numeric_limits<double>::infinity(), 2), "");
}

} // namespace
} // namespace libsplice::testing
