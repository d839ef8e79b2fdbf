// Tensions, plain numbers and counts as people write them.
#include "libsplice/units/read.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

void expect_force(const std::string& text, double expected) {
    const auto read = read_tension(text);
    ASSERT_TRUE(read) << text << ": " << read.error().text;
    EXPECT_EQ(read->basis, Tension::Basis::force) << text;
    EXPECT_DOUBLE_EQ(read->value, expected) << text;
}

TEST(ReadTension, Forces) {
    expect_force("600 N", 600.0);
    expect_force("600N", 600.0);
    expect_force(" 1.2 kN ", 1200.0);
    expect_force("60 kgf", 588.399); // 60 times 9.80665
    expect_force("100 lbf", 444.82216152605);
    expect_force("0 N", 0.0);
    expect_force("1e2 N", 100.0);
}

TEST(ReadTension, Shares) {
    const auto share = read_tension("30 %");
    ASSERT_TRUE(share);
    EXPECT_EQ(share->basis, Tension::Basis::share);
    EXPECT_DOUBLE_EQ(share->value, 0.3);
    EXPECT_DOUBLE_EQ(read_tension("100%")->value, 1.0);
    EXPECT_DOUBLE_EQ(read_tension("0 %")->value, 0.0);
}

TEST(ReadTension, NoneGivenIsTheReference) {
    EXPECT_EQ(Tension(), (Tension{Tension::Basis::reference, 0.0}));
}

void expect_tension_refused(const std::string& text, const std::string& hint) {
    const auto read = read_tension(text);
    ASSERT_FALSE(read) << text;
    EXPECT_EQ(read.error().code, Code::not_a_tension) << text;
    EXPECT_NE(read.error().text.find(hint), std::string::npos) << read.error().text;
}

TEST(ReadTension, RefusesWhatIsNone) {
    expect_tension_refused("-5 N", "negative");
    expect_tension_refused("-0 %", "negative");
    expect_tension_refused("101 %", "100 %");
    expect_tension_refused("100.01 %", "100 %");
    expect_tension_refused("600", "give one unit");
    expect_tension_refused("600 n", "give one unit");
    expect_tension_refused("600 N 5 N", "give one unit");
    expect_tension_refused("1/2 kN", "give one unit");
    expect_tension_refused("1,2 kN", "write a point");
    expect_tension_refused("", "start with a number");
    expect_tension_refused("nan N", "start with a number");
    expect_tension_refused("inf %", "start with a number");
    expect_tension_refused("1e308 kN", "too large");
    expect_tension_refused("1e400 N", "too large");
}

TEST(ReadNumber, ReadsDecimals) {
    EXPECT_DOUBLE_EQ(*read_number("6.4"), 6.4);
    EXPECT_DOUBLE_EQ(*read_number(" -2 "), -2.0);
    EXPECT_DOUBLE_EQ(*read_number("+.5"), 0.5);
    EXPECT_DOUBLE_EQ(*read_number("1e+3"), 1000.0);
}

TEST(ReadNumber, RefusesTheRest) {
    for (const char* text : {"", "x", "nan", "inf", "-inf", "0x10", "6 mm", "1 2", "1/2", "1e999",
                             "6,4", "--1", "\u0663", "1e"}) {
        const auto read = read_number(text);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().code, Code::not_a_number) << text;
    }
    EXPECT_NE(read_number("6,4").error().text.find("write a point"), std::string::npos);
    EXPECT_NE(read_number("6 mm").error().text.find("left over"), std::string::npos);
}

TEST(ReadCount, ReadsWholeNumbersWithinItsLimits) {
    EXPECT_EQ(*read_count("1", 1, 1'000'000), 1);
    EXPECT_EQ(*read_count(" 1000000 ", 1, 1'000'000), 1'000'000);
    EXPECT_EQ(*read_count("-3", -5, 5), -3);
    EXPECT_EQ(*read_count("007", 1, 10), 7);
}

TEST(ReadCount, RefusesTheRest) {
    for (const char* text : {"", "0", "1000001", "-1", "1.0", "1e3", "3 m", "x", "0x1",
                             "99999999999999999999", "\u0663", "1 2"}) {
        const auto read = read_count(text, 1, 1'000'000);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().code, Code::not_a_number) << text;
        EXPECT_NE(read.error().text.find("from 1 to 1000000"), std::string::npos);
    }
}

} // namespace
} // namespace libsplice::testing
