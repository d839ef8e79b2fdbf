// Rope lists as chandlers have them, CSV and TOML.
#include "libsplice/job/ropes/rope_rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

struct ReadList {
    std::vector<RopeRow> rows;
    std::vector<Fault> faults;
};

ReadList read_list(std::string_view text, const std::string& name) {
    Input input = Input::of_text(text, name);
    FaultSink faults;
    auto rows = read_rope_list(input, faults);
    return {rows ? *std::move(rows) : std::vector<RopeRow>(), faults.kept()};
}

TEST(RopeRows, ReadAPriceListOutOfASpreadsheet) {
    const auto list =
        read_list("Id;Title;Construction;Fibre;Diameter (mm);Breaking [kN];Mass [g/m];"
                  "Price;Prestretched;Colour\r\n"
                  "B6;\"Blue, 6\";Double braid;Polyester;6;7,5;26;2,40/m;yes;blue\r\n",
                  "list.csv");
    ASSERT_TRUE(list.faults.empty()) << list.faults.front().text;
    ASSERT_EQ(list.rows.size(), 1U);
    const RopeRow& row = list.rows[0];
    EXPECT_EQ(row.text(RopeColumn::id), "B6");
    EXPECT_EQ(row.text(RopeColumn::title), "Blue, 6");
    EXPECT_EQ(row.text(RopeColumn::construction), "Double braid");
    EXPECT_EQ(row.text(RopeColumn::diameter), "6 mm");
    EXPECT_EQ(row.text(RopeColumn::breaking), "7.5 kN");
    EXPECT_EQ(row.text(RopeColumn::mass), "26 g/m");
    EXPECT_EQ(row.text(RopeColumn::price), "2.40/m");
    EXPECT_EQ(row.text(RopeColumn::stretch), "");
    EXPECT_EQ(row.cell(RopeColumn::breaking).at, (Place{"list.csv", 2, 39}));
}

TEST(RopeRows, ReadTheSameFromToml) {
    const auto list =
        read_list("[[rope]]\nid = \"B6\"\nconstruction = \"double-braid\"\n"
                  "fibre = \"polyester\"\ndiameter = \"6 mm\"\nbreaking = \"7.5 kN\"\n"
                  "price = 2.4\nprestretched = true\n",
                  "list.toml");
    ASSERT_TRUE(list.faults.empty()) << list.faults.front().text;
    ASSERT_EQ(list.rows.size(), 1U);
    EXPECT_EQ(list.rows[0].text(RopeColumn::breaking), "7.5 kN");
    EXPECT_EQ(list.rows[0].text(RopeColumn::price), "2.4");
    EXPECT_EQ(list.rows[0].text(RopeColumn::prestretched), "yes");
    EXPECT_EQ(list.rows[0].cell(RopeColumn::breaking).at.line, 6U);
}

TEST(RopeRows, TellEveryFaultAndGiveNoList) {
    const auto list = read_list("id,construction,fibre,diameter\n"
                                "a,12-strand,HMPE,\n,12-strand,HMPE,6 mm\na,12-strand,HMPE,4 mm\n",
                                "list.csv");
    EXPECT_TRUE(list.rows.empty());
    ASSERT_EQ(list.faults.size(), 3U);
    EXPECT_EQ(list.faults[0].code, Code::cell_missing);
    EXPECT_EQ(list.faults[0].at, (Place{"list.csv", 2, 18}));
    EXPECT_EQ(list.faults[1].code, Code::cell_missing);
    EXPECT_EQ(list.faults[2].code, Code::duplicate_record);
}

TEST(RopeRows, NeedTheirColumns) {
    const auto list = read_list("id,title,fibre\na,b,c\n", "list.csv");
    ASSERT_EQ(list.faults.size(), 2U);
    EXPECT_EQ(list.faults[0].code, Code::no_heading);
    EXPECT_THAT(list.faults[0].text, ::testing::HasSubstr("construction"));
    EXPECT_THAT(list.faults[1].text, ::testing::HasSubstr("diameter"));
    EXPECT_EQ(read_list("[[ropes]]\nid = \"a\"\n", "list.toml").faults.at(0).code,
              Code::unknown_column);
}

TEST(RopeRows, HoldThousands) {
    std::string text = "id,construction,fibre,diameter,price\n";
    for (int i = 0; i < 5000; ++i) {
        text += "rope " + std::to_string(i) + ",12-strand,HMPE,6 mm,3.10\n";
    }
    EXPECT_EQ(read_list(text, "list.csv").rows.size(), 5000U);
}

} // namespace
} // namespace libsplice::testing
