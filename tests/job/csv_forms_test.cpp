// CSV as shops have it: separators, decimal commas, headings as people write them, and files that
// are no CSV at all.
#include "rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

std::map<std::string, std::string> cells_of(std::string_view text) {
    const auto job = read_csv(text);
    EXPECT_TRUE(job.faults.empty()) << job.faults.front().text;
    EXPECT_EQ(job.rows.size(), 1U);
    return job.rows.empty() ? std::map<std::string, std::string>() : job.rows[0].cells;
}

/// The one fault of a file that cannot be read.
Fault only_fault(std::string_view text) {
    const auto job = read_csv(text);
    EXPECT_EQ(job.error.size(), 1U) << text.substr(0, 40);
    EXPECT_EQ(job.faults.size(), 1U) << text.substr(0, 40);
    EXPECT_TRUE(job.rows.empty());
    return job.error.empty() ? Fault{} : job.error[0];
}

TEST(CsvForms, SemicolonsAreSeenFromTheHeading) {
    const auto cells = cells_of("name;rope;length;note\nmain sheet;r;12,5 m;\"one; two\"\n");
    EXPECT_EQ(cells.at("name"), "main sheet");
    EXPECT_EQ(cells.at("length"), "12.5 m"); // a comma that does not separate is a decimal one
    EXPECT_EQ(cells.at("note"), "one; two");
}

TEST(CsvForms, TabsAreSeenFromTheHeading) {
    const auto cells = cells_of("name\trope\tlength\tend_a.eye\nsheet\tr\t12,5 m\t4,5 cm\n");
    EXPECT_EQ(cells.at("length"), "12.5 m");
    EXPECT_EQ(cells.at("end_a.eye"), "4.5 cm");
}

TEST(CsvForms, AnEmptyCellBetweenTabsHasItsPlace) {
    const auto job = read_csv("name\trope\tlength\na\t\tb\n");
    ASSERT_EQ(job.rows.size(), 1U);
    EXPECT_EQ(job.rows[0].places.at("length"), csv_place(2, 4));
}

TEST(CsvForms, ACommaInWordsStays) {
    const auto cells = cells_of("name;note;strip\nblock 1,5;at 3,5 knots;0,6 m, 2,2 m\n");
    EXPECT_EQ(cells.at("name"), "block 1,5");
    EXPECT_EQ(cells.at("note"), "at 3,5 knots");
    EXPECT_EQ(cells.at("strip"), "0.6 m, 2.2 m");
}

TEST(CsvForms, AFileOfCommasHasNoDecimalComma) {
    const auto cells = cells_of("name,length\nsheet,\"12,5 m\"\n");
    EXPECT_EQ(cells.at("length"), "12,5 m"); // refused where lengths are read
}

TEST(CsvForms, ALineThatNamesTheSeparatorIsPassedOver) {
    const auto job = read_csv("sep=;\r\nname;rope\r\na;b\r\n");
    ASSERT_EQ(job.rows.size(), 1U);
    EXPECT_EQ(job.rows[0].cells.at("rope"), "b");
    EXPECT_EQ(job.rows[0].places.at("name"), csv_place(3, 1));
}

TEST(CsvForms, HeadingsComeInAnyCaseWithBlanksAndEitherBracket) {
    const auto cells = cells_of("Name,End A,END_B,Length (m),Carries Person,Fit First,"
                                "End A.Eye [mm],first-end\n"
                                "a,bowline,whipped,12,Yes,ring,45,B\n");
    EXPECT_EQ(cells.at("name"), "a");
    EXPECT_EQ(cells.at("end_a"), "bowline");
    EXPECT_EQ(cells.at("end_b"), "whipped");
    EXPECT_EQ(cells.at("length"), "12");
    EXPECT_EQ(cells.at("carries_person"), "yes");
    EXPECT_EQ(cells.at("end_a.eye"), "45");
    EXPECT_EQ(cells.at("first_end"), "b");
}

TEST(CsvForms, AHeadingGivesTheUnitOfABareNumber) {
    const auto cells = cells_of("name,load [kN],Rope Mass (g/m),rope_price [EUR/m],tension (KG)\n"
                                "a,1.2,23,2.40,60\n");
    EXPECT_EQ(cells.at("load"), "1.2 kN");
    EXPECT_EQ(cells.at("rope_mass"), "23 g/m");
    EXPECT_EQ(cells.at("rope_price"), "2.40");
    EXPECT_EQ(cells.at("tension"), "60 kg");
    EXPECT_EQ(cells_of("name,load [kN]\na,900 N\n").at("load"), "900 N");
}

TEST(CsvForms, ChoicesAndKindsComeInAnyCase) {
    const auto cells =
        cells_of("name,fit,end_a,prestretched,wash\na,Trim aboard,Buried-Eye,TRUE,No\n");
    EXPECT_EQ(cells.at("fit"), "trim-aboard");
    EXPECT_EQ(cells.at("end_a"), "buried-eye");
    EXPECT_EQ(cells.at("prestretched"), "yes");
    EXPECT_EQ(cells.at("wash"), "no");
}

TEST(CsvForms, ATitleRowIsSaidOnce) {
    const Fault fault = only_fault("Marsh Wren ropes 2026\nname,rope\na,b\n");
    EXPECT_EQ(fault.code, Code::no_heading);
    EXPECT_EQ(fault.at, csv_place(1, 1));
    EXPECT_THAT(fault.text, ::testing::HasSubstr("take a title out"));
}

TEST(CsvForms, ARowOfValuesInPlaceOfAHeadingIsSaidOnce) {
    EXPECT_EQ(only_fault("mainsheet,Wren 3,12.5 m,whipping\n").code, Code::no_heading);
}

TEST(CsvForms, OtherKindsOfFileAreNamed) {
    const std::string utf_16("n\0a\0m\0e\0,\0r\0o\0p\0e\0\n\0", 20);
    const std::string excel("PK\x03\x04\x14\0\x06\0", 8);
    for (const auto& [text, says] : std::initializer_list<std::pair<std::string, std::string>>{
             {excel, "spreadsheet"},
             {"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1", "spreadsheet"},
             {"\xFF\xFE" + utf_16, "UTF-16"},
             {utf_16, "UTF-16"},
             {"[defaults]\nboat = \"x\"\n", "TOML"},
             {"# my job\n\n[[line]]\nname = \"a\"\n", "TOML"},
             {"name = \"a\"\n", "TOML"},
             {"{\"pieces\": []}", "JSON"},
             {"<html><body>", "web page"},
             {"%PDF-1.7\n", "PDF"}}) {
        const Fault fault = only_fault(text);
        EXPECT_EQ(fault.code, Code::foreign_file) << says;
        EXPECT_THAT(fault.text, ::testing::HasSubstr(says));
        EXPECT_EQ(fault.at, csv_place(1, 1));
    }
}

TEST(CsvForms, AnUnknownHeadingNamesTheNearestFew) {
    const Fault fault = only_fault("name,rope,customer number\n");
    EXPECT_EQ(fault.code, Code::unknown_column);
    EXPECT_EQ(fault.at, csv_place(1, 11));
    EXPECT_LT(fault.text.size(), 130U) << fault.text;
    EXPECT_THAT(only_fault("name,rope,lenght\n").text,
                ::testing::HasSubstr("did you mean \"length\""));
}

TEST(CsvForms, ATwiceNamedColumnIsFoundInAnySpelling) {
    EXPECT_EQ(only_fault("name,End A,end_a\n").code, Code::duplicate_column);
}

TEST(CsvForms, TheSameFaultOfEveryRowIsToldOnceWithItsCount) {
    std::string text = "name,rope\n";
    for (int i = 0; i < 500; ++i) {
        text += "caf\xE9,r\n"; // as a spreadsheet saves it in an old encoding
    }
    const auto job = read_csv(text);
    ASSERT_EQ(job.rows.size(), 500U);
    for (const auto& row : job.rows) {
        ASSERT_EQ(row.fault.size(), 1U);
        EXPECT_EQ(row.fault[0].code, Code::not_utf8);
    }
    ASSERT_EQ(job.faults.size(), 2U);
    EXPECT_EQ(job.faults[0].at, csv_place(2, 1));
    EXPECT_THAT(job.faults[1].text, ::testing::HasSubstr("499 more"));
    EXPECT_EQ(job.faults[1].at, csv_place(501, 1));
}

TEST(TomlForms, SingleBracketsAreAnsweredWithTwo) {
    for (const char* text :
         {"[line]\nname = \"a\"\n[line]\nname = \"b\"\n", "[line]\nname = \"a\"\n",
          "[[line]]\nname = \"a\"\n[rope]\nid = \"b\"\n[rope]\nid = \"c\"\n"}) {
        const auto job = read_toml(text);
        ASSERT_EQ(job.faults.size(), 1U) << text;
        EXPECT_EQ(job.faults[0].code, Code::broken_toml) << text;
        EXPECT_THAT(job.faults[0].text, ::testing::HasSubstr("two brackets")) << text;
    }
}

} // namespace
} // namespace libsplice::testing
