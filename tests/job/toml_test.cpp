// TOML jobs, and that they mean what the same CSV job means.
#include "rows.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

using Cells = std::map<std::string, std::string>;

TEST(TomlJob, ReadsLinesAndDefaults) {
    const auto job = read_toml(R"([defaults]
boat = "No 1"
carries_person = false
end_b = { kind = "bowline", loop = "60 mm" }

[[line]]
name = " main halyard "
quantity = 2
prestretched = true
end_a = { kind = "buried-eye", eye = "80 mm", pin = "" }

[[line]]
name = "sheet"
boat = "No 2"
end_b = "whipped"
tolerance = 1.5

[[line]]
name = "strop"
boat = ""
end_b = { kind = "buried-eye", eye = "60 mm" }
)");
    EXPECT_TRUE(job.whole);
    EXPECT_TRUE(job.faults.empty());
    ASSERT_EQ(job.rows.size(), 3U);
    EXPECT_EQ(job.rows[0].cells, (Cells{{"name", "main halyard"},
                                        {"boat", "No 1"},
                                        {"quantity", "2"},
                                        {"carries_person", "no"},
                                        {"prestretched", "yes"},
                                        {"end_a", "buried-eye"},
                                        {"end_a.eye", "80 mm"},
                                        {"end_b", "bowline"},
                                        {"end_b.loop", "60 mm"}}));
    EXPECT_EQ(job.rows[1].cells, (Cells{{"name", "sheet"},
                                        {"boat", "No 2"},
                                        {"carries_person", "no"},
                                        {"end_b", "whipped"},
                                        {"tolerance", "1.5"}}));
    EXPECT_EQ(job.rows[2].cells, (Cells{{"name", "strop"},
                                        {"carries_person", "no"},
                                        {"end_b", "buried-eye"},
                                        {"end_b.eye", "60 mm"}}));
    EXPECT_EQ(job.rows[0].places.at("end_a.eye").line, 10U);
    EXPECT_EQ(job.rows[1].places.at("boat").file, "job.toml");
    EXPECT_EQ(job.rows[1].places.at("boat").line, 14U);
    EXPECT_EQ(job.rows[1].places.at("carries_person").line, 3U);
}

TEST(TomlJob, JoinsLists) {
    const auto job = read_toml("[[line]]\nname = \"a\"\nfit_first = [\"ball\", \"ring\"]\n"
                               "strip = \"1 m\"\nsleeve = []\n");
    ASSERT_EQ(job.rows.size(), 1U);
    EXPECT_EQ(job.rows[0].cells,
              (Cells{{"name", "a"}, {"fit_first", "ball, ring"}, {"strip", "1 m"}}));
}

TEST(TomlJob, KeepsARouteAsATable) {
    const auto job = read_toml(R"([defaults]
length = "3 m"
[[line]]
name = "lacing"
route = { lacing = "zigzag", legs = 11 }
[[line]]
name = "same"
route = { lacing = "zigzag", legs = 11 }
[[line]]
name = "other"
route = { lacing = "zigzag", legs = 12 }
[[line]]
name = "no route"
)");
    EXPECT_TRUE(job.faults.empty());
    ASSERT_EQ(job.rows.size(), 4U);
    EXPECT_TRUE(job.rows[0].has_route_table);
    EXPECT_EQ(job.rows[0].cells.count("length"), 0U) << "a route stands against a default length";
    EXPECT_EQ(job.rows[0].plan_key, job.rows[1].plan_key);
    EXPECT_NE(job.rows[0].plan_key, job.rows[2].plan_key);
    EXPECT_FALSE(job.rows[3].has_route_table);
    EXPECT_EQ(job.rows[3].cells.at("length"), "3 m");
}

TEST(TomlJob, TellsEveryUnknownKeyInOneRun) {
    const auto job = read_toml(R"(lines = 1
[defaults]
boot = "No 1"
[[line]]
name = "a"
end_a = { kind = "buried-eye", eyes = "80 mm" }
"end_b.eye" = "60 mm"
[[line]]
note = [1]
end_b = { kind = ["x"] }
)");
    ASSERT_EQ(job.faults.size(), 6U);
    EXPECT_NE(job.faults[0].text.find("did you mean \"line\"?"), std::string::npos);
    EXPECT_NE(job.faults[1].text.find("did you mean \"boat\"?"), std::string::npos);
    EXPECT_EQ(job.faults[1].at, (Place{"job.toml", 3, 1}));
    EXPECT_NE(job.faults[2].text.find("did you mean \"end_a.eye\"?"), std::string::npos);
    EXPECT_EQ(job.faults[2].at, (Place{"job.toml", 6, 32}));
    EXPECT_NE(job.faults[3].text.find("end_b = { kind = ..., eye = ... }"), std::string::npos);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(job.faults[i].code, Code::unknown_column);
    }
    EXPECT_EQ(job.faults[4].code, Code::broken_toml);
    EXPECT_EQ(job.faults[4].at.line, 9U);
    EXPECT_EQ(job.faults[5].field, "end_b.kind");
    ASSERT_EQ(job.error.size(), 1U);
    EXPECT_EQ(job.error[0].text, job.faults[0].text);
    EXPECT_TRUE(job.rows.empty());
}

TEST(TomlJob, RefusesAFileOfTheWrongShape) {
    for (const auto& [text, code] :
         {std::pair{"", Code::no_heading},
          std::pair{"[defaults]\nboat = \"a\"\n", Code::no_heading},
          std::pair{"line = 3\n", Code::broken_toml}, std::pair{"line = [3]\n", Code::broken_toml},
          std::pair{"[line]\nname = \"a\"\n", Code::broken_toml},
          std::pair{"defaults = 1\n[[line]]\nname = \"a\"\n", Code::broken_toml},
          std::pair{"[[line]\n", Code::broken_toml},
          std::pair{"[[line]]\nname = \"\xFF\"\n", Code::not_utf8}}) {
        const auto job = read_toml(text);
        ASSERT_EQ(job.error.size(), 1U) << text;
        EXPECT_EQ(job.error[0].code, code) << text;
        EXPECT_EQ(job.faults.size(), 1U) << text;
    }
}

TEST(TomlJob, RefusesALineWithTextThatCannotBeUsed) {
    const auto job = read_toml("[[line]]\nname = \"a\"\nnote = \"" + std::string(65537, 'x') +
                               "\"\n[[line]]\nname = \"b\"\nnote = \"\\u0000\"\n"
                               "[[line]]\nname = \"c\"\nnote = \"" +
                               std::string(65536, 'x') + "\"\n");
    ASSERT_EQ(job.rows.size(), 3U);
    ASSERT_EQ(job.rows[0].fault.size(), 1U);
    EXPECT_EQ(job.rows[0].fault[0].code, Code::cell_too_long);
    EXPECT_EQ(job.rows[0].fault[0].at, (Place{"job.toml", 3, 1}));
    EXPECT_EQ(job.rows[0].cells, (Cells{{"name", "a"}}));
    ASSERT_EQ(job.rows[1].fault.size(), 1U);
    EXPECT_EQ(job.rows[1].fault[0].code, Code::not_utf8);
    EXPECT_TRUE(job.rows[2].fault.empty());
    EXPECT_EQ(job.faults.size(), 2U);
}

TEST(BothJobs, MeanTheSame) {
    const auto csv = read_csv(
        "name,boat,rope,length,fit,end_a,end_a.eye,end_b,end_b.loop,carries_person\n"
        "a,No 1,12-strand HMPE 6 mm,6.4 m,trim-aboard,buried-eye,60 mm,bowline,8 cm,yes\n");
    const auto toml = read_toml(R"([defaults]
rope = "12-strand HMPE 6 mm"
[[line]]
name = "a"
boat = "No 1"
length = "6.4 m"
carries_person = true
end_b = { kind = "bowline", loop = "8 cm" }
end_a = { kind = "buried-eye", eye = "60 mm" }
fit = "trim-aboard"
)");
    ASSERT_EQ(csv.rows.size(), 1U);
    ASSERT_EQ(toml.rows.size(), 1U);
    EXPECT_EQ(csv.rows[0].cells, toml.rows[0].cells);
    EXPECT_EQ(csv.rows[0].plan_key, toml.rows[0].plan_key);
    EXPECT_FALSE(csv.rows[0].plan_key.empty());
}

} // namespace
} // namespace libsplice::testing
