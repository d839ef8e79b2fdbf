// CSV of a cut sheet and of one end, to the letter.
#include "libsplice/sheet/csv/csv_cells.h"

#include "bench.h"

#include <gtest/gtest.h>

namespace libsplice {
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
    Bench bench;
    bench.piece.cautions.clear();
    const std::string text = bench.sheet(Format::csv);
    EXPECT_EQ(line(text, 0), "name,boat,quantity,rope,finished_m,cut_m,end_a,end_b,"
                             "retained_strength,cautions,error_code,error");
    EXPECT_EQ(line(text, 1),
              "trapeze line,No 1,2,12-strand HMPE 5 mm,2,2.765,hand-eye,hand-eye,0.9,,,");
    EXPECT_EQ(line(text, 2), line(text, 1));
    EXPECT_EQ(line(text, 3), "");
}

TEST(CsvSheet, HeadingsAndLengthsFollowTheUnits) {
    Bench bench;
    bench.piece.cautions.clear();
    SheetOptions options;
    options.units = UnitSystem::imperial;
    const std::string text = bench.sheet(Format::csv, options);
    EXPECT_NE(line(text, 0).find(",finished_in,cut_in,"), std::string::npos);
    // 2000 / 25.4 = 78.740157..., 2765 / 25.4 = 108.858267...
    EXPECT_NE(line(text, 1).find(",78.7402,108.8583,"), std::string::npos);
}

TEST(CsvSheet, CautionsStandInOneCellWithTheirRule) {
    Bench bench;
    const std::string rule = to_text(bench.book.citation(document_of(bench.book)));
    const std::string text = line(bench.sheet(Format::csv), 1);
    EXPECT_NE(text.find("end a: a tail of 300 mm is short (" + rule +
                        "); end b: a tail of 300 mm is short (" + rule + ")"),
              std::string::npos)
        << text;
}

TEST(CsvSheet, ARefusedLineSaysWhy) {
    Bench bench;
    bench.refuse();
    EXPECT_EQ(line(bench.sheet(Format::csv), 1),
              "trapeze line,No 1,2,12-strand HMPE 5 mm,2,,hand-eye,hand-eye,,,401,the buries meet");
    bench.piece.finished.reset();
    EXPECT_NE(line(bench.sheet(Format::csv), 1).find("5 mm,,,hand-eye"), std::string::npos);
}

TEST(CsvEnd, HasARowForEachOfTheLedger) {
    const Bench bench;
    const std::string text = bench.end_sheet(Format::csv);
    EXPECT_EQ(line(text, 0), "item,length_m,sd_m,group,source");
    EXPECT_EQ(line(text, 2), "throat to bearing point,-0.04,0,end: throat to bearing point,job");
    EXPECT_EQ(line(text, 4).substr(0, 37), "take-up as spliced,0.02,0.01,take-up,");
}

} // namespace
} // namespace libsplice
