// CSV of a cut sheet and of one end, to the letter.
#include "libsplice/sheet/csv/csv_cells.h"

#include "bench.h"

#include <gtest/gtest.h>

namespace libsplice::testing {
namespace {

std::string cell(std::string_view text) {
    std::string row;
    append_text_cell(row, text);
    return row;
}

std::string line(const std::string& text, std::size_t number) {
    std::size_t start = 0;
    for (; number != 0; --number) {
        start = text.find('\n', start) + 1;
    }
    return text.substr(start, text.find('\n', start) - start);
}

TEST(CsvCell, IsQuotedWhereItMustBe) {
    EXPECT_EQ(cell("main halyard"), "main halyard");
    EXPECT_EQ(cell(""), "");
    EXPECT_EQ(cell("a,b"), "\"a,b\"");
    EXPECT_EQ(cell("1/2\" rope"), "\"1/2\"\" rope\"");
    EXPECT_EQ(cell("a\nb"), "\"a\nb\"");
    EXPECT_EQ(cell("a\rb"), "\"a\rb\"");
}

TEST(CsvCell, IsNeverTakenForAFormula) {
    EXPECT_EQ(cell("=1+1"), "'=1+1");
    EXPECT_EQ(cell("+1"), "'+1");
    EXPECT_EQ(cell("-1"), "'-1");
    EXPECT_EQ(cell("@x"), "'@x");
    EXPECT_EQ(cell("=A1,B1"), "\"'=A1,B1\"");
    EXPECT_EQ(cell("a=b"), "a=b");
}

TEST(CsvCell, LengthsAreExactMetresOrInchesWithFourPlaces) {
    const auto shown = [](Nanometres length, UnitSystem units) {
        std::string row;
        append_length_cell(row, length, units);
        return row;
    };
    EXPECT_EQ(shown(6'475'000'001, UnitSystem::metric), "6.475000001");
    EXPECT_EQ(shown(25'400'000, UnitSystem::imperial), "1.0000");
    EXPECT_EQ(shown(-12'700'000, UnitSystem::imperial), "-0.5000");
    EXPECT_EQ(shown(1'000'000'000, UnitSystem::imperial), "39.3701"); // 39.37007874
}

TEST(CsvSheet, WritesTheColumnsThatWerePromised) {
    const One one = cut_one(two_eyes());
    const std::string text = sheet_of({two_eyes(), plain_line}, Format::csv);
    EXPECT_EQ(line(text, 0), "name,boat,quantity,rope,finished_m,cut_m,end_a,end_b,"
                             "retained_strength,cautions,error_code,error");
    std::string cut;
    append_metres(cut, one.piece().cut);
    const std::string start =
        "trapeze line,No 1,2,12-strand HMPE 5 mm,2," + cut + ",locked-eye,buried-eye,0.85,";
    EXPECT_EQ(line(text, 1).substr(0, start.size()), start);
    EXPECT_EQ(line(text, 2).substr(0, 30), "line,,1,12-strand HMPE 5 mm,4,");
    EXPECT_EQ(line(text, 3), "");
}

TEST(CsvSheet, HeadingsAndLengthsFollowTheUnits) {
    SheetOptions options;
    options.units = UnitSystem::imperial;
    const std::string text = sheet_of({two_eyes()}, Format::csv, options);
    EXPECT_NE(line(text, 0).find(",finished_in,cut_in,"), std::string::npos);
    EXPECT_NE(line(text, 1).find(",78.7402,"), std::string::npos); // 2000 / 25.4 = 78.740157...
}

TEST(CsvSheet, CautionsStandInOneCellWithTheirRule) {
    const Line person = with(two_eyes(), {{"carries_person", "yes"}, {"load", "1.2 kN"}});
    const std::string text = line(sheet_of({person}, Format::csv), 1);
    const auto at = text.find("the design factor is for the load as stated");
    ASSERT_NE(at, std::string::npos) << text;
    EXPECT_NE(text.find("; ", at), std::string::npos) << text;
}

TEST(CsvSheet, ARefusedLineSaysWhy) {
    const Fault fault = refuse_one(refused_line());
    const std::string text = line(sheet_of({refused_line()}, Format::csv), 1);
    const std::string start =
        "trapeze line,No 1,2,12-strand HMPE 5 mm,0.3,,locked-eye,buried-eye,,,";
    EXPECT_EQ(text.substr(0, start.size()), start);
    EXPECT_NE(text.find(',' + std::to_string(static_cast<int>(fault.code)) + ','),
              std::string::npos);
    const Line unread = with(two_eyes(), {{"length", "long"}});
    EXPECT_NE(line(sheet_of({unread}, Format::csv), 1).find("5 mm,,,locked-eye"),
              std::string::npos);
}

TEST(CsvEnd, HasARowForEachOfTheLedger) {
    const std::string text = end_sheet_of(
        "buried-eye", "12-strand HMPE 5 mm",
        {{"eye", "40 mm", {}}, {"pin", "8 mm", {}}, {"bury", "300 mm", {}}}, Format::csv);
    EXPECT_EQ(line(text, 0), "item,length_m,sd_m,group,source");
    EXPECT_NE(text.find("\ntail,"), std::string::npos) << text;
    EXPECT_NE(text.find("\nthroat to bearing point,-0.04,"), std::string::npos) << text;
}

} // namespace
} // namespace libsplice::testing
