// A line from cells is the line that a file of the same cells gives.
#include "rows.h"

#include <gtest/gtest.h>

#include <array>
#include <string>

namespace libsplice::testing {
namespace {

struct ReadLine {
    std::vector<OwnedRow> rows;
    std::vector<Fault> faults;
    bool failed = false;
};

ReadLine line_of(std::span<const NamedCell> cells) {
    ReadLine read;
    FaultSink faults;
    const auto whole = read_line_of_cells(cells, known_fields, faults, [&](const JobRow& row) {
        read.rows.push_back(owned(row));
        return true;
    });
    read.faults = faults.kept();
    read.failed = !whole;
    return read;
}

TEST(LineOfCells, IsTheLineOfAFile) {
    const auto from_file = read_csv("name,rope,length [m],end_a,end_a.eye,load [kN],note\n"
                                    "\"a \"\"b\"\", c\",r,12.5,Bowline,45 mm,1.2,\"two\nlines\"\n");
    const std::array cells{NamedCell{"name", "a \"b\", c"}, NamedCell{"rope", " r "},
                           NamedCell{"length [m]", "12.5"}, NamedCell{"end_a", "Bowline"},
                           NamedCell{"end_a.eye", "45 mm"}, NamedCell{"load [kN]", "1.2"},
                           NamedCell{"note", "two\nlines"}};
    const auto line = line_of(cells);
    ASSERT_EQ(line.rows.size(), 1U);
    ASSERT_EQ(from_file.rows.size(), 1U);
    EXPECT_EQ(line.rows[0].cells, from_file.rows[0].cells);
    EXPECT_EQ(line.rows[0].plan_key, from_file.rows[0].plan_key);
    EXPECT_FALSE(line.rows[0].plan_key.empty());
}

TEST(LineOfCells, RefusesAHeadingAsAFileDoes) {
    for (const auto& [heading, code] : {std::pair{"lenght", Code::unknown_column},
                                        {"end_a.eyes", Code::unknown_column},
                                        {"Name", Code::duplicate_column}}) {
        const std::array cells{NamedCell{"name", "a"}, NamedCell{heading, "b"}};
        const auto line = line_of(cells);
        EXPECT_TRUE(line.failed) << heading;
        ASSERT_EQ(line.faults.size(), 1U) << heading;
        EXPECT_EQ(line.faults[0].code, code) << heading;
        EXPECT_EQ(line.faults[0].at, Place{});
        EXPECT_TRUE(line.rows.empty());
    }
}

TEST(LineOfCells, RefusesATextThatNoCellMayHold) {
    const std::string too_long(70'000, 'x');
    for (const std::string& text : {std::string("caf\xE9"), too_long, std::string("a\0b", 3)}) {
        const std::array cells{NamedCell{"name", "a"}, NamedCell{"note", text}};
        const auto line = line_of(cells);
        ASSERT_EQ(line.rows.size(), 1U);
        EXPECT_EQ(line.rows[0].fault.size(), 1U);
        EXPECT_TRUE(line.rows[0].plan_key.empty());
    }
}

TEST(LineOfCells, HandsOnNothingWhereAllIsBlank) {
    const std::array cells{NamedCell{"name", " "}, NamedCell{"rope", ""}};
    const auto line = line_of(cells);
    EXPECT_TRUE(line.rows.empty());
    EXPECT_FALSE(line.failed);
}

} // namespace
} // namespace libsplice::testing
