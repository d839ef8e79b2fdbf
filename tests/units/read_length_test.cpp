// Lengths as people write them. Expected values are hand arithmetic with 1 in = 25.4 mm.
#include "libsplice/units/read.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace libsplice::testing {
namespace {

struct Written {
    std::string text;
    Nanometres expected;
};

void expect_reads(const std::vector<Written>& cases,
                  std::optional<LengthUnit> bare = std::nullopt) {
    for (const auto& [text, expected] : cases) {
        const auto read = read_length(text, bare);
        ASSERT_TRUE(read) << text << ": " << read.error().text;
        EXPECT_EQ(to_nanometres(read->length), expected) << text;
    }
}

/// Each text is refused, and the fault holds `hint`.
void expect_refused(const std::vector<std::string>& texts, const std::string& hint,
                    std::optional<LengthUnit> bare = std::nullopt) {
    for (const auto& text : texts) {
        const auto read = read_length(text, bare);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().code, Code::not_a_length) << text;
        EXPECT_NE(read.error().text.find(hint), std::string::npos) << read.error().text;
    }
}

TEST(ReadLength, MetricWithUnit) {
    expect_reads({{"6.4 m", 6'400'000'000},
                  {"60 mm", 60'000'000},
                  {"60mm", 60'000'000},
                  {"  60\tmm ", 60'000'000},
                  {"12.5 cm", 125'000'000},
                  {"0 m", 0},
                  {".5 m", 500'000'000},
                  {"007 mm", 7'000'000},
                  {"16.480 m", 16'480'000'000}});
}

TEST(ReadLength, SignsAndExponents) {
    expect_reads({{"-5 mm", -5'000'000},
                  {"+5 mm", 5'000'000},
                  {"1e3 mm", 1'000'000'000},
                  {"1E+3 mm", 1'000'000'000},
                  {"2.5e-1 m", 250'000'000},
                  {"-1 1/2 in", -38'100'000},
                  {"-12 ft 6 in", -3'810'000'000}});
}

TEST(ReadLength, InchesAndFeet) {
    expect_reads({{"1 in", 25'400'000},
                  {"3/8 in", 9'525'000},
                  {"3/8in", 9'525'000},
                  {"1 1/2 in", 38'100'000},
                  {"3 7/16 in", 87'312'500},
                  {"0.25 in", 6'350'000},
                  {"12 ft", 3'657'600'000},
                  {"1/2 ft", 152'400'000},
                  {"2.5 ft", 762'000'000},
                  {"12 ft 6 in", 3'810'000'000},
                  {"12ft6in", 3'810'000'000},
                  {"12 ft 0 in", 3'657'600'000},
                  {"12 ft 11.5 in", 3'949'700'000},
                  {"54 ft 0 13/16 in", 16'479'837'500}});
}

TEST(ReadLength, BareNumbersTakeTheUnitOfTheHeading) {
    expect_reads({{"6.4", 6'400'000'000}, {"1e1", 10'000'000'000}}, LengthUnit::m);
    expect_reads({{"60", 60'000'000}}, LengthUnit::mm);
    expect_reads({{"1 1/2", 38'100'000}, {"3/8", 9'525'000}}, LengthUnit::in);
    expect_reads({{"12", 3'657'600'000}}, LengthUnit::ft);
}

TEST(ReadLength, AUnitInTheTextGoesBeforeTheHeadings) {
    expect_reads({{"60 mm", 60'000'000}, {"12 ft 6 in", 3'810'000'000}}, LengthUnit::m);
}

TEST(ReadLength, RemembersHowItWasWritten) {
    EXPECT_FALSE(read_length("6 mm")->imperial);
    EXPECT_TRUE(read_length("1/4 in")->imperial);
    EXPECT_TRUE(read_length("12 ft")->imperial);
    EXPECT_TRUE(read_length("3", LengthUnit::ft)->imperial);
    EXPECT_FALSE(read_length("3 m", LengthUnit::ft)->imperial);
}

TEST(ReadLength, AsksForAUnit) {
    expect_refused({"6.4", "3/8", "1 1/2", "12 ft 6"}, "give a unit");
}

TEST(ReadLength, AsksForAPoint) {
    expect_refused({"6,4 m", "1,000 m", "6,4"}, "write a point");
    expect_refused({"6,4"}, "write a point", LengthUnit::m);
}

TEST(ReadLength, RefusesTooManyInches) {
    expect_refused({"12 ft 12 in", "12 ft 13 in", "12 ft 11 16/16 in"}, "less than 12");
}

TEST(ReadLength, RefusesOtherThanInchesAfterFeet) {
    expect_refused({"12 ft 6 mm", "12 ft 1 ft"}, "only inches");
    expect_refused({"12.5 ft 6 in", "1/2 ft 6 in"}, "whole number");
    expect_refused({"12 ft -6 in"}, "start with a number");
    expect_refused({"12 ft 6 in 3 in"}, "left over");
}

TEST(ReadLength, RefusesBadFractions) {
    expect_refused({"1/0 in", "2 1/0 in", "0/0 in"}, "0 under its stroke");
    expect_refused({"1/ in", "1/-2 in", "1/2.5 in", "1/x in", "1/1e1 in"}, "whole numbers");
    expect_refused({"3/8 mm", "1 1/2 m", "1/2 cm"}, "in and ft only");
    expect_refused({"1/2"}, "in and ft only", LengthUnit::mm);
}

TEST(ReadLength, RefusesUnknownUnits) {
    expect_refused(
        {"6 M", "6 metres", "6 km", "3/8\"", "6'", "0x10 m", "1/2/3 in", "6 mm.", "1.2.3 m"},
        "the units are");
}

TEST(ReadLength, RefusesWhatIsLeftOver) {
    expect_refused({"6 m 2", "6 m 50 cm", "6 m2", "1 in 2"}, "left over");
}

TEST(ReadLength, RefusesWhatIsNoNumber) {
    expect_refused({"", "  ", "m", "nan m", "inf m", "-inf m", "infinity", "--5 m", "- 5 mm",
                    "+-5 m", ". m", "-", "e5 m", "long"},
                   "start with a number");
}

TEST(ReadLength, RefusesDigitsThatAreNotAscii) {
    expect_refused({"\u0663 m", "\uFF16 m", "\u00BD in", "\u22125 mm"}, "start with a number");
    EXPECT_FALSE(read_length("6\u00A0m")); // a no-break space is no blank
}

TEST(ReadLength, RefusesLengthsOutOfAllReason) {
    expect_refused({"1e999 m", "1e-999 m"}, "too large or too small");
    expect_refused({"1" + std::string(60'000, '0') + " m"}, "too large or too small");
    expect_refused({"9000001 m", "-9000001 m", "1e300 ft", "1e308 in", "1e308 ft"}, "9,000 km");
    expect_reads({{"9000000 m", 9'000'000'000'000'000}});
}

TEST(ReadLength, ReadsDigitsWithoutEnd) {
    expect_reads({{std::string(60'000, '0') + "6.4 m", 6'400'000'000},
                  {"6.4" + std::string(60'000, '0') + " m", 6'400'000'000}});
}

TEST(ReadLength, QuotesLongTextInPart) {
    const auto read = read_length("x" + std::string(60'000, 'y'));
    ASSERT_FALSE(read);
    EXPECT_LT(read.error().text.size(), 200U);
    std::string accents = "x";
    for (int i = 0; i < 100; ++i) {
        accents += "é";
    }
    const auto cut = read_length(accents);
    ASSERT_FALSE(cut);
    EXPECT_NE(cut.error().text.find("é…\""), std::string::npos) << cut.error().text;
}

TEST(ReadLengthUnit, KnowsFiveUnits) {
    EXPECT_EQ(read_length_unit("mm"), LengthUnit::mm);
    EXPECT_EQ(read_length_unit("cm"), LengthUnit::cm);
    EXPECT_EQ(read_length_unit("m"), LengthUnit::m);
    EXPECT_EQ(read_length_unit("in"), LengthUnit::in);
    EXPECT_EQ(read_length_unit("ft"), LengthUnit::ft);
    for (const char* text : {"", "M", "km", " m", "inch"}) {
        EXPECT_EQ(read_length_unit(text), std::nullopt) << text;
    }
}

} // namespace
} // namespace libsplice::testing
