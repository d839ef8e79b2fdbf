// Columns, their names, and the plan_key of a line.
#include "libsplice/job/vocabulary.h"

#include "rows.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace libsplice::testing {
namespace {

/// The columns as the contract lists them.
constexpr std::array<std::string_view, 52> contract{"name",
                                                    "boat",
                                                    "quantity",
                                                    "rope",
                                                    "length",
                                                    "route",
                                                    "tension",
                                                    "end_a",
                                                    "end_b",
                                                    "fit",
                                                    "tolerance",
                                                    "first_end",
                                                    "state",
                                                    "prestretched",
                                                    "carries_person",
                                                    "load",
                                                    "spare",
                                                    "extra",
                                                    "wear",
                                                    "pair",
                                                    "fit_first",
                                                    "reversible",
                                                    "smallest_hole",
                                                    "wash",
                                                    "lot",
                                                    "colour",
                                                    "note",
                                                    "headroom",
                                                    "travel",
                                                    "cleat",
                                                    "stretch",
                                                    "strip",
                                                    "sleeve",
                                                    "middle",
                                                    "rope_breaking",
                                                    "rope_stretch",
                                                    "rope_core",
                                                    "rope_measured",
                                                    "rope_mass",
                                                    "rope_price",
                                                    "rope_prestretched",
                                                    "place",
                                                    "set_tension",
                                                    "most_give",
                                                    "standing",
                                                    "held_by",
                                                    "held_range",
                                                    "sheave",
                                                    "hand",
                                                    "runs",
                                                    "floats",
                                                    "price_limit"};

TEST(Columns, AreThoseOfTheContract) {
    for (const auto name : contract) {
        EXPECT_TRUE(find_column(name)) << name;
    }
    EXPECT_EQ(column_count, contract.size());
}

/// What does not change how a line is made: its names, its count, its length, words for the bench,
/// and the needs that only the choice of a rope reads.
constexpr std::array<std::string_view, 19> not_deciding{
    "name",   "boat",  "quantity",    "length",    "pair",       "lot",     "colour",
    "note",   "place", "set_tension", "most_give", "standing",   "held_by", "held_range",
    "sheave", "hand",  "runs",        "floats",    "price_limit"};

/// The plan_key of a line of one column besides its rope.
std::string plan_key_with(const std::string& heading, const std::string& cell) {
    const bool is_rope = heading == "rope";
    const auto job =
        read_csv((is_rope ? "" : "rope,") + heading + '\n' + (is_rope ? "" : "r,") + cell + "\n");
    EXPECT_EQ(job.rows.size(), 1U) << heading;
    return job.rows.empty() ? std::string() : job.rows[0].plan_key;
}

// Whatever is not on the short list above must part two lines, a column of tomorrow too: two lines
// that share a plan get one another's length.
TEST(PlanKey, ChangesWithEveryColumnButThoseThatChangeNoLength) {
    for (const auto name : column_names) {
        const std::string heading(name);
        const bool decides = std::ranges::find(not_deciding, name) == not_deciding.end();
        EXPECT_EQ(plan_key_with(heading, "1") != plan_key_with(heading, "2"), decides) << heading;
        if (heading != "rope") { // a row without any cell is no line
            EXPECT_EQ(plan_key_with(heading, "1") != plan_key_with(heading, ""), decides)
                << heading;
        }
    }
    for (const char* field : {"end_a.eye", "end_b.eye"}) {
        EXPECT_NE(plan_key_with(field, "1"), plan_key_with(field, "2")) << field;
        EXPECT_NE(plan_key_with(field, "1"), plan_key_with(field, "")) << field;
    }
}

TEST(PlanKey, ChangesWithWhatATableHolds) {
    const auto key = [](const std::string& line) {
        const auto job = read_toml("[[line]]\nrope = \"r\"\n" + line + "\n");
        EXPECT_EQ(job.rows.size(), 1U) << line;
        return job.rows.empty() ? std::string() : job.rows[0].plan_key;
    };
    EXPECT_NE(key("load = { sheet_of = \"18 m2\", wind = \"20 kn\" }"),
              key("load = { sheet_of = \"18 m2\", wind = \"25 kn\" }"));
    EXPECT_NE(key("middle = [ { kind = \"loop\", at = \"1 m\" } ]"),
              key("middle = [ { kind = \"loop\", at = \"2 m\" } ]"));
    EXPECT_NE(key("middle = [ { kind = \"loop\", at = \"1 m\" } ]"), key(""));
}

// Two jobs may each call a rope of their own "blue 6".
TEST(PlanKey, ChangesWithTheJobsOwnRope) {
    const auto key = [](const std::string& breaking) {
        const auto job = read_toml("[[rope]]\nid = \"blue 6\"\nconstruction = \"double-braid\"\n"
                                   "fibre = \"polyester\"\ndiameter = \"6 mm\"\nbreaking = \"" +
                                   breaking + "\"\n[[line]]\nrope = \"blue 6\"\n");
        EXPECT_EQ(job.rows.size(), 1U);
        return job.rows.empty() ? std::string() : job.rows[0].plan_key;
    };
    EXPECT_NE(key("6 kN"), key("9 kN"));
}

TEST(PlanKey, KeepsColumnsAndUnitsApart) {
    EXPECT_NE(plan_key_with("end_a", "x"), plan_key_with("end_b", "x"));
    EXPECT_NE(plan_key_with("end_a.eye", "x"), plan_key_with("end_b.eye", "x"));
    EXPECT_NE(plan_key_with("end_a.eye", "x"), plan_key_with("end_a.pin", "x"));
    EXPECT_NE(plan_key_with("extra [mm]", "1"), plan_key_with("extra [m]", "1"));
}

TEST(PlanKey, CannotBeForgedByTheTextOfACell) {
    // Whatever stands between two cells, a text that holds the same bytes must not pass for it.
    const auto split = read_csv("end_a,end_b\nx,y\n").rows.at(0).plan_key;
    const auto after_x = split.substr(split.find('x') + 1);
    const auto forged = read_csv("end_a\n\"x" + after_x + "\"\n");
    ASSERT_EQ(forged.rows.size(), 1U);
    EXPECT_NE(forged.rows[0].plan_key, split);
}

} // namespace
} // namespace libsplice::testing
