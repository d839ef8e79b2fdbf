// Stock files: what a row says, every fault with its place, and the same text written again.
#include "libsplice/job/stock/stock.h"

#include <gtest/gtest.h>

namespace libsplice::testing {

namespace {

struct ReadStock {
    std::vector<StockRow> rows;
    std::vector<Fault> faults;
};

ReadStock read_rows_of(std::string_view text, const std::string& name = "stock.csv") {
    Input input = Input::of_text(text, name);
    FaultSink faults;
    auto rows = read_stock(input, faults);
    return {rows ? *std::move(rows) : std::vector<StockRow>(), faults.kept()};
}

TEST(Stock, ARowSaysWhatThereIs) {
    const auto read = read_rows_of("id,rope,length,count,kind,usable,lot,colour,price,least,note\n"
                                   "r,a rope,40 m,3,reel,1500 mm,L,red,2.5,,\"one, opened\"\n"
                                   "o,a rope,,,order,,,,1.2/m,10 m,\n"
                                   "n,a rope,100 m,,order,,,,180/reel,2,\n");
    ASSERT_TRUE(read.faults.empty()) << to_text(read.faults[0]);
    ASSERT_EQ(read.rows.size(), 3U);
    EXPECT_EQ(read.rows[0].length, 40 * nanometres_per_metre);
    EXPECT_EQ(read.rows[0].count, 3);
    EXPECT_EQ(read.rows[0].usable, 1'500'000'000);
    EXPECT_EQ(read.rows[0].lot, "L");
    EXPECT_EQ(read.rows[0].colour, "red");
    EXPECT_EQ(read.rows[0].price->value, 2.5);
    EXPECT_FALSE(read.rows[0].price->whole);
    EXPECT_FALSE(read.rows[1].length);
    EXPECT_FALSE(read.rows[1].count);
    EXPECT_EQ(read.rows[1].least_length, 10 * nanometres_per_metre);
    EXPECT_TRUE(read.rows[2].price->whole);
    EXPECT_EQ(read.rows[2].least_count, 2);
}

TEST(Stock, AReelIsOneUnlessACountIsGiven) {
    const auto read = read_rows_of("id,rope,length [ft],kind\nr,a,100,reel\n");
    ASSERT_EQ(read.rows.size(), 1U);
    EXPECT_EQ(read.rows[0].count, 1);
    EXPECT_EQ(read.rows[0].length, 30'480'000'000);
}

TEST(Stock, EveryFaultIsFoundInOneRun) {
    const auto read = read_rows_of("id,rope,length,kind,price\n"
                                   "r,a,40,reel,\n"
                                   "r,,3 m,rele,dear\n"
                                   ",a,,offcut,\n");
    std::vector<std::pair<Code, Place>> came;
    for (const Fault& fault : read.faults) {
        came.emplace_back(fault.code, fault.at);
    }
    const std::vector<std::pair<Code, Place>> wanted{
        {Code::not_a_length, {"stock.csv", 2, 5}},    {Code::cell_missing, {"stock.csv", 3, 3}},
        {Code::not_a_choice, {"stock.csv", 3, 8}},    {Code::not_a_number, {"stock.csv", 3, 13}},
        {Code::duplicate_stock, {"stock.csv", 3, 1}}, {Code::cell_missing, {"stock.csv", 4, 1}},
        {Code::cell_missing, {"stock.csv", 4, 4}},
    };
    EXPECT_EQ(came, wanted);
}

TEST(Stock, HeadingsAreHeldToTheirWords) {
    const auto code_of = [](std::string_view text) {
        const auto read = read_rows_of(text);
        return read.faults.empty() ? Code::file_unreadable : read.faults[0].code;
    };
    EXPECT_EQ(code_of(""), Code::no_heading);
    EXPECT_EQ(code_of("id,rope,length\n"), Code::no_heading);
    EXPECT_EQ(code_of("id,rope,length,kind,colr\n"), Code::unknown_column);
    EXPECT_EQ(code_of("id,rope,length,kind,id\n"), Code::duplicate_column);
    EXPECT_EQ(code_of("id,rope,length [furlong],kind\n"), Code::unknown_column);
    EXPECT_EQ(code_of("id,rope,length,kind\nr,a,3 m,reel,5\n"), Code::too_many_cells);
}

TEST(Stock, TomlHasTheSameWords) {
    const auto read = read_rows_of("[[stock]]\nid = \"r\"\nrope = \"a\"\nlength = \"40 m\"\n"
                                   "count = 3\nkind = \"reel\"\n\n[[stock]]\nkind = \"order\"\n",
                                   "stock.toml");
    ASSERT_EQ(read.faults.size(), 2U); // the second has neither id nor rope
    EXPECT_EQ(read.faults[0].code, Code::cell_missing);
    EXPECT_EQ(read.faults[0].at.line, 8U);
    EXPECT_EQ(read_rows_of("[reels]\n", "stock.toml").faults[0].code, Code::unknown_column);
    EXPECT_EQ(read_rows_of("[[stock]]\ncolr = 1\n", "s.toml").faults[0].code, Code::unknown_column);
}

TEST(Stock, WhatIsWrittenReadsTheSame) {
    const auto read = read_rows_of("id,rope,length [m],count,kind,note\n"
                                   "r,\"a \"\"rope\"\"\",40,3,reel,\"two\nlines, and =1\"\n");
    ASSERT_EQ(read.rows.size(), 1U);
    for (const bool toml : {false, true}) {
        const std::string text = write_stock(read.rows, toml);
        const auto again = read_rows_of(text, toml ? "s.toml" : "s.csv");
        ASSERT_EQ(again.rows.size(), 1U) << text;
        EXPECT_EQ(again.rows[0].rope, "a \"rope\"");
        EXPECT_EQ(again.rows[0].length, 40 * nanometres_per_metre);
        EXPECT_EQ(again.rows[0].texts, read.rows[0].texts);
    }
}

} // namespace

} // namespace libsplice::testing
