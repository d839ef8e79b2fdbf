// What a line asks of its rope: its own words, and those of its place where it is silent.
#include "asked.h"

namespace libsplice::testing {
namespace {

TEST(Needs, WordsOfTheLineAreRead) {
    const auto [needs, faults] = asked_by({{"name", "line"},
                                           {"load", "1.2 kN"},
                                           {"set_tension", "200 N"},
                                           {"most_give", "30 mm"},
                                           {"standing", "Season"},
                                           {"held_by", "cleat, Winch"},
                                           {"held_range", "4-8 mm"},
                                           {"sheave", "40 mm"},
                                           {"smallest_hole", "12 mm"},
                                           {"hand", "now and then"},
                                           {"runs", "runs-hot"},
                                           {"floats", "yes"},
                                           {"price_limit", "2.40/m"}});
    ASSERT_TRUE(faults.empty()) << faults.front().text;
    EXPECT_NEAR(needs.load->si(), 1200.0, 1e-9);
    EXPECT_EQ(needs.set, (Tension{Tension::Basis::force, 200.0}));
    EXPECT_NEAR(needs.most_give->si(), 0.030, 1e-12);
    EXPECT_EQ(needs.standing, Standing::season);
    EXPECT_EQ(needs.held_by, (std::vector{Holder::cleat, Holder::winch}));
    EXPECT_NEAR(needs.held_range->from.si(), 0.004, 1e-12);
    EXPECT_NEAR(needs.held_range->up_to.si(), 0.008, 1e-12);
    EXPECT_NEAR(needs.sheave->si(), 0.040, 1e-12);
    EXPECT_NEAR(needs.smallest_hole->si(), 0.012, 1e-12);
    EXPECT_EQ(needs.hand, Handling::now_and_then);
    EXPECT_EQ(needs.runs, Running::runs_hot);
    EXPECT_TRUE(needs.floats);
    EXPECT_NEAR(*needs.price_limit, 2.4, 1e-12);
    EXPECT_FALSE(needs.carries_person);
    EXPECT_TRUE(needs.place.empty());
    EXPECT_EQ(source_of(needs, Column::load)->status, Status::job);
    EXPECT_FALSE(source_of(needs, Column::carries_person));
}

TEST(Needs, NothingIsAskedWithoutAWord) {
    const auto [needs, faults] = asked_by({{"name", "main sheet"}});
    EXPECT_TRUE(faults.empty());
    EXPECT_TRUE(needs.place.empty()) << "a name is no place";
    EXPECT_TRUE(needs.held_by.empty());
    EXPECT_FALSE(needs.load || needs.set || needs.most_give || needs.standing || needs.held_range ||
                 needs.sheave || needs.smallest_hole || needs.hand || needs.runs || needs.floats ||
                 needs.price_limit || needs.carries_person);
}

TEST(Needs, APlaceSpeaksWhereTheLineIsSilent) {
    const auto [needs, faults] =
        asked_by({{"name", "line"}, {"place", "Mainsheet"}, {"held_by", "winch"}});
    ASSERT_TRUE(faults.empty()) << faults.front().text;
    EXPECT_EQ(needs.place, "main sheet");
    EXPECT_EQ(needs.held_by, (std::vector{Holder::winch})) << "the line's own word";
    EXPECT_EQ(source_of(needs, Column::held_by)->status, Status::job);
    EXPECT_EQ(needs.hand, Handling::all_day) << "the place's";
    const auto& source = source_of(needs, Column::hand);
    ASSERT_TRUE(source);
    EXPECT_EQ(source->key, "small-boat-rope-advice");
    EXPECT_TRUE(asked_by({{"name", "line"}, {"place", "trapeze line"}}).needs.carries_person);
}

TEST(Needs, TheUnitOfAHeadingIsTheJobsOwn) {
    const auto asked = asked_by({{"name", "line"},
                                 {"most_give [mm]", "30"},
                                 {"sheave [mm]", ""},
                                 {"place", "main halyard"}});
    ASSERT_TRUE(asked.faults.empty()) << asked.faults.front().text;
    EXPECT_NEAR(asked.needs.most_give->si(), 0.030, 1e-12);
}

TEST(Needs, ARangeMayBeWrittenInThreeWays) {
    for (const char* text : {"4-8 mm", "4 mm - 8 mm", "4 to 8 mm", "0.4 cm to 8 mm"}) {
        const auto [needs, faults] = asked_by({{"name", "line"}, {"held_range", text}});
        ASSERT_TRUE(faults.empty()) << text;
        EXPECT_NEAR(needs.held_range->from.si(), 0.004, 1e-12) << text;
        EXPECT_NEAR(needs.held_range->up_to.si(), 0.008, 1e-12) << text;
    }
}

TEST(Needs, WhatCannotBeReadIsSaidAtItsColumn) {
    struct Row {
        const char* column;
        const char* text;
        Code code;
    };
    for (const Row& row :
         {Row{"place", "main halyrd", Code::not_a_choice},
          Row{"held_by", "claet", Code::not_a_choice},
          Row{"held_range", "8-4 mm", Code::not_a_length},
          Row{"held_range", "8 mm", Code::not_a_length},
          Row{"held_range", "4-8", Code::not_a_length}, Row{"hand", "often", Code::not_a_choice},
          Row{"runs", "hot", Code::not_a_choice}, Row{"standing", "hours", Code::not_a_choice},
          Row{"most_give", "30", Code::not_a_length},
          Row{"price_limit", "cheap", Code::not_a_number},
          Row{"price_limit", "-1", Code::not_a_number}, Row{"load", "20 %", Code::not_a_tension}}) {
        const auto faults = asked_by({{"name", "line"}, {row.column, row.text}}).faults;
        ASSERT_EQ(faults.size(), 1U) << row.column << ' ' << row.text;
        EXPECT_EQ(faults.front().code, row.code) << faults.front().text;
        EXPECT_EQ(faults.front().field, row.column);
    }
}

} // namespace
} // namespace libsplice::testing
