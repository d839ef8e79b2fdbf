// Columns, their names, and the plan_key of a line.
#include "rows.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::test {
namespace {

TEST(Columns, HaveTheNamesOfTheDocumentation) {
    EXPECT_EQ(column_name(Column::name), "name");
    EXPECT_EQ(column_name(Column::end_b), "end_b");
    EXPECT_EQ(column_name(Column::first_end), "first_end");
    EXPECT_EQ(column_name(Column::colour), "colour");
    EXPECT_EQ(column_name(Column::sleeve), "sleeve");
    std::string all;
    for (const auto name : column_names()) {
        all += std::string(name) + ' ';
    }
    EXPECT_EQ(all,
              "name boat quantity rope length route tension end_a end_b fit tolerance first_end "
              "state prestretched carries_person load spare extra wear pair fit_first lot colour "
              "note strip "
              "sleeve headroom travel cleat smallest_hole reversible wash stretch ");
}

TEST(Columns, SayWhatTheyMean) {
    for (std::size_t i = 0; i < column_count; ++i) {
        EXPECT_FALSE(column_meaning(static_cast<Column>(i)).empty());
    }
    EXPECT_NE(column_meaning(Column::wear).find("worn"), std::string_view::npos);
    EXPECT_NE(column_meaning(Column::sleeve).find("sleeve"), std::string_view::npos);
}

/// The plan_key of a line of one column besides its rope.
std::string plan_key_with(const std::string& heading, const std::string& cell) {
    const auto job = read_csv("rope," + heading + "\nr," + cell + "\n");
    EXPECT_EQ(job.rows.size(), 1U) << heading;
    return job.rows.empty() ? std::string() : job.rows[0].plan_key;
}

TEST(Recipe, ChangesWithWhatDecidesHowALineIsMade) {
    for (const char* deciding :
         {"route",     "tension",   "end_a",        "end_b",          "fit",
          "tolerance", "first_end", "prestretched", "carries_person", "load",
          "spare",     "extra",     "wear",         "strip",          "sleeve",
          "headroom",  "travel",    "cleat",        "smallest_hole",  "reversible",
          "wash",      "stretch",   "end_a.eye",    "end_b.eye"}) {
        EXPECT_NE(plan_key_with(deciding, "1"), plan_key_with(deciding, "2")) << deciding;
        EXPECT_NE(plan_key_with(deciding, "1"), plan_key_with(deciding, "")) << deciding;
    }
}

TEST(Recipe, LeavesOutWhatDoesNot) {
    for (const char* other : {"name", "boat", "quantity", "length", "note", "pair", "lot", "colour",
                              "state", "fit_first"}) {
        EXPECT_EQ(plan_key_with(other, "1"), plan_key_with(other, "")) << other;
    }
}

TEST(Recipe, KeepsColumnsAndUnitsApart) {
    EXPECT_NE(plan_key_with("end_a", "x"), plan_key_with("end_b", "x"));
    EXPECT_NE(plan_key_with("end_a.eye", "x"), plan_key_with("end_b.eye", "x"));
    EXPECT_NE(plan_key_with("end_a.eye", "x"), plan_key_with("end_a.pin", "x"));
    EXPECT_NE(plan_key_with("extra [mm]", "1"), plan_key_with("extra [m]", "1"));
}

TEST(Recipe, CannotBeForgedByTheTextOfACell) {
    // Whatever stands between two cells, a text that holds the same bytes must not pass for it.
    const auto split = read_csv("end_a,end_b\nx,y\n").rows.at(0).plan_key;
    const auto after_x = split.substr(split.find('x') + 1);
    const auto forged = read_csv("end_a\n\"x" + after_x + "\"\n");
    ASSERT_EQ(forged.rows.size(), 1U);
    EXPECT_NE(forged.rows[0].plan_key, split);
}

} // namespace
} // namespace libsplice::test
