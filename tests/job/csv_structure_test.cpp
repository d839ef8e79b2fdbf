// CSV files whose structure is wrong: headings and quotes.
#include "rows.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

void expect_file_fault(const ReadJob& job, Code code, const Place& at) {
    ASSERT_EQ(job.error.size(), 1U);
    EXPECT_EQ(job.error[0].code, code) << job.error[0].text;
    EXPECT_EQ(job.error[0].at, at);
    ASSERT_EQ(job.faults.size(), 1U) << "pushed once";
    EXPECT_EQ(job.faults[0].text, job.error[0].text);
}

TEST(CsvHeading, MustBeThere) {
    expect_file_fault(read_csv(""), Code::no_heading, csv_place(0, 0));
    expect_file_fault(read_csv("\xEF\xBB\xBF"), Code::no_heading, csv_place(0, 0));
    expect_file_fault(read_csv("\n \r\n,,\n"), Code::no_heading, csv_place(0, 0));
}

TEST(CsvHeading, AloneIsAJobWithoutLines) {
    const auto job = read_csv("name,rope");
    EXPECT_TRUE(job.whole);
    EXPECT_TRUE(job.rows.empty());
    EXPECT_TRUE(job.faults.empty());
}

TEST(CsvHeading, NamesTheNearestColumn) {
    const auto job = read_csv("name, lenght ,rope\na,1 m,b\n");
    expect_file_fault(job, Code::unknown_column, csv_place(1, 7));
    EXPECT_NE(job.error[0].text.find("did you mean \"length\"?"), std::string::npos);
    EXPECT_EQ(job.error[0].field, "lenght");
    EXPECT_TRUE(job.rows.empty());
}

TEST(CsvHeading, NamesTheNearestFieldOfAnEnd) {
    const auto job = read_csv("name,end_b.burry\na,1 m\n");
    expect_file_fault(job, Code::unknown_column, csv_place(1, 6));
    EXPECT_NE(job.error[0].text.find("did you mean \"end_b.bury\"?"), std::string::npos);
}

TEST(CsvHeading, NamesThreeColumnsWhereNoneIsNear) {
    const auto job = read_csv("name,wavelength of light\n");
    ASSERT_EQ(job.error.size(), 1U);
    EXPECT_NE(job.error[0].text.find("the nearest are"), std::string::npos);
}

TEST(CsvHeading, TellsEveryFaultInOneRun) {
    const auto job =
        read_csv("nam,rope,rope,boat [m],length [furlong],end_a.eye [mm],end_a.eye,\n");
    ASSERT_EQ(job.faults.size(), 5U);
    EXPECT_EQ(job.faults[0].code, Code::unknown_column);
    EXPECT_EQ(job.faults[0].at, csv_place(1, 1));
    EXPECT_EQ(job.faults[1].code, Code::duplicate_column);
    EXPECT_EQ(job.faults[1].at, csv_place(1, 10));
    EXPECT_EQ(job.faults[2].code, Code::unknown_column);
    EXPECT_EQ(job.faults[2].at, csv_place(1, 15));
    EXPECT_EQ(job.faults[3].code, Code::unknown_column);
    EXPECT_NE(job.faults[3].text.find("furlong"), std::string::npos);
    EXPECT_EQ(job.faults[4].code, Code::duplicate_column);
    EXPECT_EQ(job.faults[4].field, "end_a.eye");
    ASSERT_EQ(job.error.size(), 1U);
    EXPECT_EQ(job.error[0].text, job.faults[0].text);
}

TEST(CsvHeading, GivesUnits) {
    Input input = Input::of_text("name,length [m],tolerance[ mm ],spare [cm],extra [ft],wear [in],"
                                 "end_a.eye [mm],end_b.eye\na,1,2,3,4,5,6,7 mm\n",
                                 "job.csv");
    FaultSink faults;
    const auto read = read_job(input, known_fields, faults, [](const JobRow& row) {
        const JobLine& line = row.line;
        EXPECT_EQ(line.cell(Column::length).unit, LengthUnit::m);
        EXPECT_EQ(line.cell(Column::tolerance).unit, LengthUnit::mm);
        EXPECT_EQ(line.cell(Column::spare).unit, LengthUnit::cm);
        EXPECT_EQ(line.cell(Column::extra).unit, LengthUnit::ft);
        EXPECT_EQ(line.cell(Column::wear).unit, LengthUnit::in);
        EXPECT_EQ(line.cell(Column::name).unit, std::nullopt);
        EXPECT_EQ(line.fields.size(), 2U);
        EXPECT_EQ(line.fields[0].cell.unit, LengthUnit::mm);
        EXPECT_EQ(line.fields[1].cell.unit, std::nullopt);
        return true;
    });
    EXPECT_TRUE(read);
    EXPECT_TRUE(faults.empty());
}

TEST(CsvHeading, HasAThousandColumnsAtMost) {
    const auto most = read_csv("name" + std::string(999, ',') + "\na\n");
    EXPECT_TRUE(most.whole);
    EXPECT_EQ(most.rows.size(), 1U);
    expect_file_fault(read_csv("name" + std::string(1000, ',') + "\na\n"), Code::too_many_columns,
                      csv_place(1, 1005));
}

TEST(CsvHeading, IsUtf8) {
    expect_file_fault(read_csv("name,n\xFCte\na,b\n"), Code::not_utf8, csv_place(1, 6));
    const std::string utf16("\xFF\xFEn\0a\0m\0e\0\n\0", 12);
    ASSERT_EQ(read_csv(utf16).error.size(), 1U);
    EXPECT_EQ(read_csv(utf16).error[0].code, Code::foreign_file);
}

TEST(CsvQuotes, MustBeClosed) {
    const auto job = read_csv("name,note\na,b\nc,  \"open\nd,e\n");
    expect_file_fault(job, Code::bad_quotes, csv_place(3, 5));
    EXPECT_EQ(job.rows.size(), 1U) << "rows before it have been handed on";
}

TEST(CsvQuotes, MayBeOpenAtTheVeryEnd) {
    expect_file_fault(read_csv("name\n\""), Code::bad_quotes, csv_place(2, 1));
    expect_file_fault(read_csv("name\n\"a\"\""), Code::bad_quotes, csv_place(2, 1));
}

TEST(CsvQuotes, AreFollowedByNoText) {
    expect_file_fault(read_csv("name,note\na,\"two\nlines\" x\n"), Code::bad_quotes,
                      csv_place(2, 3));
}

TEST(CsvQuotes, StandRoundTheWholeCell) {
    expect_file_fault(read_csv("name,note\na, 3/8\" rope\n"), Code::bad_quotes, csv_place(2, 4));
}

TEST(CsvQuotes, AreFoundOpenInAFileLargerThanAnyCell) {
    std::string text = "name,note\na,\"open\n";
    while (text.size() < 1'000'000) {
        text += "b,c\n";
    }
    expect_file_fault(read_csv(text), Code::bad_quotes, csv_place(2, 3));
}

} // namespace
} // namespace libsplice::testing
