// CSV rows: cells, blanks, line ends, quotes, and rows that are refused.
#include "libsplice/job/line.h"

#include "rows.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

TEST(CsvRows, ReadsCellsUnderTheirHeadings) {
    const auto job = read_csv("name,rope,length,end_a,end_a.eye\n"
                              "main halyard,12-strand HMPE 6 mm,6.4 m,buried-eye,60 mm\n"
                              "jib sheet,solid-braid polyester 8 mm,9 m,,\n");
    EXPECT_TRUE(job.whole);
    EXPECT_TRUE(job.faults.empty());
    ASSERT_EQ(job.rows.size(), 2U);
    const std::map<std::string, std::string> first{{"name", "main halyard"},
                                                   {"rope", "12-strand HMPE 6 mm"},
                                                   {"length", "6.4 m"},
                                                   {"end_a", "buried-eye"},
                                                   {"end_a.eye", "60 mm"}};
    EXPECT_EQ(job.rows[0].cells, first);
    const std::map<std::string, std::string> second{
        {"name", "jib sheet"}, {"rope", "solid-braid polyester 8 mm"}, {"length", "9 m"}};
    EXPECT_EQ(job.rows[1].cells, second);
}

TEST(CsvRows, DropsBlanksRoundHeadingsAndCells) {
    const auto job = read_csv(" name\t, rope ,note\n  a\t,\" b \", \t \n");
    ASSERT_EQ(job.rows.size(), 1U);
    EXPECT_EQ(job.rows[0].cells,
              (std::map<std::string, std::string>{{"name", "a"}, {"rope", "b"}}));
}

TEST(CsvRows, TakesMarkCrlfAndNoLastLineEnd) {
    const auto job = read_csv("\xEF\xBB\xBFname,rope\r\na,b\r\n\r\nc,\"d\"");
    EXPECT_TRUE(job.faults.empty());
    ASSERT_EQ(job.rows.size(), 2U);
    EXPECT_EQ(job.rows[0].cells.at("rope"), "b");
    EXPECT_EQ(job.rows[0].places.at("name"), csv_place(2, 1));
    EXPECT_EQ(job.rows[1].cells.at("rope"), "d");
    EXPECT_EQ(job.rows[1].places.at("rope"), csv_place(4, 3));
}

TEST(CsvRows, TakesLoneCarriageReturnsAsLineEnds) {
    const auto job = read_csv("name,rope\ra,b\rc,d\r");
    ASSERT_EQ(job.rows.size(), 2U);
    EXPECT_EQ(job.rows[1].cells.at("name"), "c");
    EXPECT_EQ(job.rows[1].places.at("rope"), csv_place(3, 3));
}

TEST(CsvRows, PassesOverBlankLines) {
    const auto job = read_csv("\n  \nname,rope\n\n,\n \t\na,b\n\n");
    EXPECT_TRUE(job.faults.empty());
    ASSERT_EQ(job.rows.size(), 1U);
    EXPECT_EQ(job.rows[0].places.at("name"), csv_place(7, 1));
}

TEST(CsvRows, FillsShortRowsWithEmptyCells) {
    const auto job = read_csv("name,rope,note,boat\na,b,c,d\ne\n");
    EXPECT_TRUE(job.faults.empty());
    ASSERT_EQ(job.rows.size(), 2U);
    EXPECT_EQ(job.rows[1].cells, (std::map<std::string, std::string>{{"name", "e"}}));
}

TEST(CsvRows, KeepsCommasQuotesAndLineEndsInQuotes) {
    const auto job = read_csv("name,note,rope\n\"a, \"\"big\"\" one\",\"two\r\nlines\",b\nc,d,e\n");
    ASSERT_EQ(job.rows.size(), 2U);
    EXPECT_EQ(job.rows[0].cells.at("name"), "a, \"big\" one");
    EXPECT_EQ(job.rows[0].cells.at("note"), "two\r\nlines");
    EXPECT_EQ(job.rows[0].places.at("note"), csv_place(2, 18));
    EXPECT_EQ(job.rows[0].places.at("rope"), csv_place(3, 8));
    EXPECT_EQ(job.rows[1].places.at("name"), csv_place(4, 1));
}

TEST(CsvRows, CountsColumnsInCharacters) {
    const auto job = read_csv("name,rope,note\né→𝄞,  tau,  \"ö\" \n\"ü\nß\", x,y\n");
    ASSERT_EQ(job.rows.size(), 2U);
    EXPECT_EQ(job.rows[0].places.at("rope"), csv_place(2, 7));
    EXPECT_EQ(job.rows[0].places.at("note"), csv_place(2, 13));
    EXPECT_EQ(job.rows[1].places.at("name"), csv_place(3, 1));
    EXPECT_EQ(job.rows[1].places.at("rope"), csv_place(4, 5));
    EXPECT_EQ(job.rows[1].places.at("note"), csv_place(4, 7));
}

TEST(CsvRows, PlacesWhatIsNotThere) {
    Input input = Input::of_text("name,rope,note\nab,c\n", "job.csv");
    FaultSink faults;
    std::vector<Place> places;
    const auto read = read_job(input, known_fields, faults, [&](const JobRow& row) {
        places = {row.line.place(row.line.cell(Column::note)),
                  row.line.place(row.line.cell(Column::boat))};
        return true;
    });
    EXPECT_TRUE(read);
    EXPECT_EQ(places, (std::vector{csv_place(2, 5), csv_place(2, 1)}));
}

TEST(CsvRows, RefusesTextBeyondTheHeading) {
    const auto job = read_csv("name,rope,\na,b, , \nc,d,,e,f\ng,h,i\nj,k\n");
    ASSERT_EQ(job.rows.size(), 4U);
    EXPECT_TRUE(job.rows[0].fault.empty());
    ASSERT_EQ(job.rows[1].fault.size(), 1U);
    EXPECT_EQ(job.rows[1].fault[0].code, Code::too_many_cells);
    EXPECT_EQ(job.rows[1].fault[0].at, csv_place(3, 6));
    EXPECT_EQ(job.rows[1].cells.at("name"), "c");
    EXPECT_TRUE(job.rows[1].plan_key.empty());
    ASSERT_EQ(job.rows[2].fault.size(), 1U) << "a column without a heading holds text";
    EXPECT_EQ(job.rows[2].fault[0].at, csv_place(4, 5));
    EXPECT_TRUE(job.rows[3].fault.empty());
    EXPECT_EQ(job.faults.size(), 2U);
    EXPECT_TRUE(job.error.empty());
}

TEST(CsvRows, RefusesARowOfMoreThanAThousandCells) {
    const auto job = read_csv("name\na" + std::string(999, ',') + "\nb" + std::string(1000, ',') +
                              "\nc" + std::string(300'000, ',') + "\nd\n");
    ASSERT_EQ(job.rows.size(), 4U);
    EXPECT_TRUE(job.rows[0].fault.empty());
    ASSERT_EQ(job.rows[1].fault.size(), 1U);
    EXPECT_EQ(job.rows[1].fault[0].code, Code::too_many_cells);
    EXPECT_EQ(job.rows[1].fault[0].at, csv_place(3, 1002));
    EXPECT_EQ(job.rows[2].fault.size(), 1U);
    EXPECT_EQ(job.rows[3].cells.at("name"), "d");
    EXPECT_EQ(job.rows[3].places.at("name"), csv_place(5, 1));
}

TEST(CsvRows, TakesACellOf64KiBAndRefusesALongerOne) {
    const std::string longest(65536, 'x');
    const auto job = read_csv("name,note,rope\na," + longest + ",r\nb,  " + longest + "y,r\nc,\"" +
                              longest + "\",r\nd,\"" + longest + "z\",r\ne,,r\n");
    ASSERT_EQ(job.rows.size(), 5U);
    EXPECT_EQ(job.rows[0].cells.at("note"), longest);
    EXPECT_EQ(job.rows[2].cells.at("note"), longest);
    for (const std::size_t refused : {1U, 3U}) {
        ASSERT_EQ(job.rows[refused].fault.size(), 1U);
        EXPECT_EQ(job.rows[refused].fault[0].code, Code::cell_too_long);
        EXPECT_EQ(job.rows[refused].cells.count("note"), 0U);
        EXPECT_EQ(job.rows[refused].cells.at("rope"), "r");
    }
    EXPECT_EQ(job.rows[1].fault[0].at, csv_place(3, 5));
    EXPECT_EQ(job.rows[3].fault[0].at, csv_place(5, 3));
    EXPECT_EQ(job.rows[4].places.at("rope"), csv_place(6, 4));
    EXPECT_EQ(job.faults.size(), 2U);
}

TEST(CsvRows, RefusesTextThatIsNotUtf8) {
    const auto job = read_csv("name,note,rope\n"
                              "sch\xC3\xB6n,gr\xFC"
                              "n,r\n"
                              "b\xE9,\xC3\xB6,\xFFq\n"
                              "c,fine,r\n");
    ASSERT_EQ(job.rows.size(), 3U);
    ASSERT_EQ(job.rows[0].fault.size(), 1U);
    EXPECT_EQ(job.rows[0].fault[0].code, Code::not_utf8);
    EXPECT_EQ(job.rows[0].fault[0].at, csv_place(2, 7));
    EXPECT_EQ(job.rows[0].cells.at("name"), "sch\xC3\xB6n");
    EXPECT_EQ(job.rows[0].cells.count("note"), 0U);
    EXPECT_EQ(job.rows[1].cells, (std::map<std::string, std::string>{{"note", "\xC3\xB6"}}));
    EXPECT_TRUE(job.rows[2].fault.empty());
    ASSERT_EQ(job.faults.size(), 3U);
    EXPECT_EQ(job.faults[1].at, csv_place(3, 1));
    EXPECT_EQ(job.faults[2].at, csv_place(3, 6));
}

TEST(CsvRows, RefusesZeroBytes) {
    const auto job = read_csv(std::string("name,rope\na,b") + '\0' + "c\nd,e\n");
    ASSERT_EQ(job.rows.size(), 2U);
    ASSERT_EQ(job.rows[0].fault.size(), 1U);
    EXPECT_EQ(job.rows[0].fault[0].code, Code::not_utf8);
    EXPECT_EQ(job.rows[0].fault[0].at, csv_place(2, 3));
    EXPECT_TRUE(job.rows[1].fault.empty());
}

TEST(CsvRows, StopsWhenToldTo) {
    Input input = Input::of_text("name\na\nb\nc\n", "job.csv");
    FaultSink faults;
    int rows = 0;
    const auto read =
        read_job(input, known_fields, faults, [&](const JobRow&) { return ++rows < 2; });
    ASSERT_TRUE(read);
    EXPECT_FALSE(*read);
    EXPECT_EQ(rows, 2);
}

} // namespace
} // namespace libsplice::testing
