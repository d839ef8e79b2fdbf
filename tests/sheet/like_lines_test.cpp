// Lines that differ in boat and place only are one entry; the words of boats, ropes and columns.
#include "libsplice/sheet/panel/like_lines.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/rope_words.h"

#include "bench.h"

#include <gtest/gtest.h>

namespace libsplice::testing {
namespace {

/// Gathers the lines of a job; `cutter` keeps what the entries point to.
void gather(Cutter& cutter, const std::vector<Line>& lines, Gathered& into) {
    FaultSink faults(1000);
    const std::string csv = csv_of(lines);
    Input input = Input::of_text(csv, "job.csv");
    const auto whole =
        read_job(input, shipped_book().field_names(), faults, [&](const JobRow& row) {
            into.add(cutter.cut(row, faults));
            return true;
        });
    EXPECT_TRUE(whole);
}

TEST(LikeLines, DifferInBoatAndQuantityOnly) {
    Cutter cutter(shipped_book(), {});
    Gathered lines;
    gather(cutter,
           {two_eyes(), with(two_eyes(), {{"boat", "No 2"}, {"quantity", "3"}}),
            with(two_eyes(), {{"colour", "red"}}), with(two_eyes(), {{"length", "2.01 m"}}),
            with(two_eyes(), {{"name", "other"}}), with(two_eyes(), {{"note", "a note"}})},
           lines);
    ASSERT_EQ(lines.entries().size(), 5U);
    EXPECT_EQ(lines.entries().front().pieces(), 5);
    EXPECT_EQ(boats_in_words(lines.entries().front().boats()), "No 1 (2), No 2 (3)");
    EXPECT_EQ(lines.entries().front().piece().name, "trapeze line");
    EXPECT_EQ(lines.entries().front().lines(), (std::vector<std::size_t>{1, 2}));
    EXPECT_EQ(lines.entries().back().piece().note, "a note");
}

TEST(LikeLines, BoatsThatCountOnAreJoined) {
    EXPECT_EQ(boats_in_words({{"Cat 1", 1}, {"Cat 2", 1}, {"Cat 3", 1}, {"Cat 5", 1}}),
              "Cat 1 to Cat 3, Cat 5");
    EXPECT_EQ(boats_in_words({{"Cat 1", 1}, {"Cat 2", 1}}), "Cat 1, Cat 2");
    EXPECT_EQ(boats_in_words({{"Cat 1", 2}, {"Cat 2", 2}, {"Cat 3", 2}}), "Cat 1 to Cat 3 (2)");
    EXPECT_EQ(boats_in_words({{"Cat 9", 1}, {"Dog 10", 1}}), "Cat 9, Dog 10");
    EXPECT_EQ(boats_in_words({{"", 1}}), "");
}

std::string words_of(std::string_view rope, std::string_view colour = {},
                     UnitSystem units = UnitSystem::metric) {
    return rope_in_words(*shipped_book().catalogue().rope(rope), colour, units);
}

TEST(RopeWords, AreConstructionFibreDiameterAndColour) {
    EXPECT_EQ(words_of("12-strand HMPE 5 mm", "blue"), "12-strand HMPE, 5 mm, blue");
    EXPECT_EQ(words_of("double-braid polyester 2.5 mm"), "double braid polyester, 2.5 mm");
    EXPECT_EQ(words_of("3-strand polyester 1/2 in"), "3-strand polyester, 1/2 in");
    EXPECT_EQ(words_of("demo-shock-5", "black"), "shock cord, 5 mm, black");
    EXPECT_EQ(words_of("demo-cd-hmpe-5", "red"), "core-dependent HMPE, 5 mm, red");
}

TEST(ColumnLength, NamesNoUnit) {
    EXPECT_EQ(tape_cell(8'240'400'000, UnitSystem::metric), "8240");
    EXPECT_EQ(tape_cell(-499'999, UnitSystem::metric), "0");
    EXPECT_EQ(tape_cell(500'000, UnitSystem::metric), "1");
    // 100 mm = 3.937 in, 62.99 sixteenths
    EXPECT_EQ(tape_cell(100'000'000, UnitSystem::imperial), "3 15/16");
    EXPECT_EQ(tape_cell(25'400'000, UnitSystem::imperial), "1");
    EXPECT_EQ(metre_cell(760'000'000, UnitSystem::metric), "0.760");
    EXPECT_EQ(metre_cell(-15'230'400'000, UnitSystem::metric), "-15.230");
}

} // namespace
} // namespace libsplice::testing
