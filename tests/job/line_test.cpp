// Columns, their names, and the recipe of a line.
#include "rows.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::test {
namespace {

TEST(Columns, HaveTheNamesOfTheDocumentation) {
    EXPECT_EQ(column_name(Column::name), "name");
    EXPECT_EQ(column_name(Column::end_b), "end_b");
    EXPECT_EQ(column_name(Column::made_first), "made_first");
    EXPECT_EQ(column_name(Column::colour), "colour");
    EXPECT_EQ(column_name(Column::sleeve), "sleeve");
    std::string all;
    for (const auto name : column_names()) {
        all += std::string(name) + ' ';
    }
    EXPECT_EQ(all,
              "name boat quantity rope length route tension end_a end_b fit tolerance made_first "
              "state bedded person load spare extra wear pair thread lot colour note strip "
              "sleeve headroom travel cleat passes turnable wash stretch ");
}

TEST(Columns, SayWhatTheyMean) {
    for (std::size_t i = 0; i < column_count; ++i) {
        EXPECT_FALSE(column_meaning(static_cast<Column>(i)).empty());
    }
    EXPECT_NE(column_meaning(Column::wear).find("worn"), std::string_view::npos);
    EXPECT_NE(column_meaning(Column::sleeve).find("sleeve"), std::string_view::npos);
}

/// The recipe of a line of one column besides its rope.
std::string recipe_with(const std::string& heading, const std::string& cell) {
    const auto job = read_csv("rope," + heading + "\nr," + cell + "\n");
    EXPECT_EQ(job.rows.size(), 1U) << heading;
    return job.rows.empty() ? std::string() : job.rows[0].recipe;
}

TEST(Recipe, ChangesWithWhatDecidesHowALineIsMade) {
    for (const char* deciding :
         {"route",      "tension",  "end_a",  "end_b",    "fit",       "tolerance",
          "made_first", "bedded",   "person", "load",     "spare",     "extra",
          "wear",       "strip",    "sleeve", "headroom", "travel",    "cleat",
          "passes",     "turnable", "wash",   "stretch",  "end_a.eye", "end_b.eye"}) {
        EXPECT_NE(recipe_with(deciding, "1"), recipe_with(deciding, "2")) << deciding;
        EXPECT_NE(recipe_with(deciding, "1"), recipe_with(deciding, "")) << deciding;
    }
}

TEST(Recipe, LeavesOutWhatDoesNot) {
    for (const char* other : {"name", "boat", "quantity", "length", "note", "pair", "lot", "colour",
                              "state", "thread"}) {
        EXPECT_EQ(recipe_with(other, "1"), recipe_with(other, "")) << other;
    }
}

TEST(Recipe, KeepsColumnsAndUnitsApart) {
    EXPECT_NE(recipe_with("end_a", "x"), recipe_with("end_b", "x"));
    EXPECT_NE(recipe_with("end_a.eye", "x"), recipe_with("end_b.eye", "x"));
    EXPECT_NE(recipe_with("end_a.eye", "x"), recipe_with("end_a.pin", "x"));
    EXPECT_NE(recipe_with("extra [mm]", "1"), recipe_with("extra [m]", "1"));
}

TEST(Recipe, CannotBeForgedByTheTextOfACell) {
    // Whatever stands between two cells, a text that holds the same bytes must not pass for it.
    const auto split = read_csv("end_a,end_b\nx,y\n").rows.at(0).recipe;
    const auto after_x = split.substr(split.find('x') + 1);
    const auto forged = read_csv("end_a\n\"x" + after_x + "\"\n");
    ASSERT_EQ(forged.rows.size(), 1U);
    EXPECT_NE(forged.rows[0].recipe, split);
}

} // namespace
} // namespace libsplice::test
