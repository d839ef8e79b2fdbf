// Quantities, their arithmetic, and whole nanometres.
#include "libsplice/units/quantity.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace libsplice::testing {
namespace {

template <class A, class B>
concept can_add = requires(A a, B b) {
    a + b;
};

static_assert(can_add<Length, Length>);
static_assert(!can_add<Length, Force>);
static_assert(!can_add<Length, double>);
static_assert(!std::is_convertible_v<double, Length>);

TEST(Quantity, AddsAndScales) {
    Length length = metres(6.5) + millimetres(250.0) - metres(1.0);
    EXPECT_DOUBLE_EQ(length.si(), 5.75);
    length += metres(1.0);
    length -= metres(0.5);
    EXPECT_DOUBLE_EQ(length.si(), 6.25);
    EXPECT_DOUBLE_EQ((2.0 * length).si(), 12.5);
    EXPECT_DOUBLE_EQ((length * 2.0).si(), 12.5);
    EXPECT_DOUBLE_EQ((length / 2.0).si(), 3.125);
    EXPECT_DOUBLE_EQ(length / metres(2.5), 2.5);
    EXPECT_DOUBLE_EQ((-length).si(), -6.25);
    EXPECT_DOUBLE_EQ(Length().si(), 0.0);
}

TEST(Quantity, Compares) {
    EXPECT_LT(metres(1.0), metres(2.0));
    EXPECT_GE(newtons(2.0), newtons(2.0));
    EXPECT_EQ(millimetres(1000.0), metres(1.0));
    EXPECT_NE(metres(1.0), metres(1.5));
}

TEST(Quantity, ForceUnitsAreTheExactOnes) {
    EXPECT_DOUBLE_EQ(newtons_per_kgf, 9.80665);
    EXPECT_DOUBLE_EQ(newtons_per_lbf, 4.4482216152605);
    EXPECT_DOUBLE_EQ(metres_per_inch, 0.0254);
}

TEST(Nanometres, RoundToTheNearest) {
    EXPECT_EQ(to_nanometres(metres(6.4)), 6'400'000'000);
    EXPECT_EQ(to_nanometres(millimetres(0.1)), 100'000);
    EXPECT_EQ(to_nanometres(metres(1.4e-9)), 1);
    EXPECT_EQ(to_nanometres(metres(-1.6e-9)), -2);
    EXPECT_DOUBLE_EQ(from_nanometres(6'400'000'000).si(), 6.4);
    EXPECT_EQ(to_nanometres(from_nanometres(3'999'999'999'999'999)), 3'999'999'999'999'999);
}

TEST(Nanometres, AddUpExactly) {
    EXPECT_EQ(to_nanometres(metres(0.1)) + to_nanometres(metres(0.2)), to_nanometres(metres(0.3)));
}

TEST(Nanometres, HoldTheLongestLength) {
    EXPECT_EQ(to_nanometres(metres(9'000'000.0)), 9'000'000'000'000'000);
}

} // namespace
} // namespace libsplice::testing
