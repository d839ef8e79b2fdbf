// Load-elongation curves as tables give them: one point, a power curve, several points.
#include "libsplice/catalogue/rope_stretch.h"

#include "folder.h"

#include <gmock/gmock.h>

namespace libsplice::testing {
namespace {

/// The source that a whole record carries.
const std::string cited_record = "source = \"book\"\nlocator = \"p. 1\"\nstatus = \"printed\"\n";

std::string point(const std::string& value, const std::string& at, const std::string& more = {}) {
    return "{ value = " + value + ", unit = \"%\", at = \"" + at + "\"" + more + " }";
}

/// The stretch of a rope whose record says `stretch = ...`.
RopeStretch read(const std::string& stretch) {
    const Folder folder;
    folder.write("ropes/one.toml", rope_record("r", cited_record + "stretch = " + stretch));
    return *load({folder.path()}).rope("r")->stretch;
}

std::vector<Fault> faults(const std::string& stretch) {
    const Folder folder;
    folder.write("ropes/one.toml", rope_record("r", cited_record + "stretch = " + stretch));
    return faults_of({folder.path()});
}

TEST(StretchTables, OnePointIsALine) {
    const auto stretch = read(point("2.8", "20 %"));
    EXPECT_NEAR(stretch.curve.at(0.3), 0.042, 1e-12);
    EXPECT_FALSE(stretch.by_force);
    EXPECT_EQ(stretch.origin, SpreadOrigin::none);
}

TEST(StretchTables, SpreadIsAShareOfTheStretch) {
    // 2 to 3 %: 0.5 / root 3 of 2.5.
    const auto range =
        read(R"({ low = 2, high = 3, unit = "%", at = "20 %", spread = "printed range" })");
    EXPECT_NEAR(range.spread, 0.1154700538, 1e-10);
    EXPECT_EQ(range.origin, SpreadOrigin::printed_range);
    // Of several points the widest.
    const std::string guess = ", spread = \"stated guess\", sd = ";
    const auto several =
        read("{ points = [" + point("1", "10 %", guess + "0.1") + ", " +
             point("2", "20 %", guess + "0.5") + ", " + point("3", "30 %") + "] }");
    EXPECT_NEAR(several.spread, 0.25, 1e-12);
    EXPECT_EQ(several.origin, SpreadOrigin::stated_guess);
}

TEST(StretchTables, TwoPointsMakeAPowerCurve) {
    const auto stretch = read("{ points = [" + point("0.46", "10 %") + ", " +
                              point("0.96", "30 %") + "], form = \"power\" }");
    EXPECT_NEAR(stretch.curve.at(0.2), 0.007317257581, 1e-12);
}

TEST(StretchTables, LoadsMayBeForces) {
    const auto stretch = read("{ points = [" + point("15", "10 N") + ", " + point("32", "20 N") +
                              ", " + point("60", "0.03 kN") + "] }");
    EXPECT_TRUE(stretch.by_force);
    EXPECT_NEAR(stretch.curve.at(30.0), 0.60, 1e-12);
    EXPECT_EQ(stretch.last_load(), "30 N");
}

TEST(StretchTables, WhatIsNoCurveIsRefused) {
    const auto refused = [](const std::string& stretch, const std::string& words) {
        const auto found = faults(stretch);
        ASSERT_EQ(found.size(), 1U) << stretch;
        EXPECT_EQ(found.front().code, Code::table_value_wrong) << stretch;
        EXPECT_THAT(found.front().text, ::testing::HasSubstr(words));
    };
    const auto points = [](const std::string& list) {
        return "{ points = [" + list + "] }";
    };
    refused(points(point("1", "10 %") + ", " + point("2", "20 %")), "form = \"power\"");
    refused(points(point("1", "10 %")), "one stands as");
    refused(points(point("1", "10 %") + ", " + point("0.9", "20 %") + ", " + point("3", "30 %")),
            "must rise");
    refused(points(point("1", "20 %") + ", " + point("2", "10 %") + ", " + point("3", "30 %")),
            "must rise");
    refused(points(point("1", "10 %") + ", " + point("2", "20 N") + ", " + point("3", "30 %")),
            "all shares");
    refused("{ points = [" + point("1", "10 %") + ", " + point("2", "20 %") +
                "], form = \"line\" }",
            "no form of a curve");
    refused("{ points = 3 }", "must be a list");
    refused(point("0", "20 %"), "must rise");
    refused(point("2", "0 %"), "\"at\" must be");
}

TEST(StretchTables, ARuleHoldsForItsConstructionAndFibre) {
    const Folder folder;
    folder.write(
        "constructions.toml",
        rule_record("a",
                    "fibres = [\"HMPE\"]\n" + cited_record + "stretch = " + point("0.7", "20 %")) +
            rule_record("b", cited_record + "stretch = " + point("5", "20 %")) +
            rule_record("c", cited_record + "stretch_spread = { value = 30, unit = \"%\" }"));
    folder.write("ropes/one.toml",
                 rope_record("own", cited_record + "stretch = " + point("1.5", "20 %")));
    const Catalogue catalogue = load({folder.path()});
    std::vector<const Rule*> rules;
    for (const Rule& rule : catalogue.rules()) {
        rules.push_back(&rule);
    }
    const auto at_a_fifth = [&](std::string_view text) {
        const auto rope = catalogue.rope(text);
        const auto stretch = stretch_of(*rope, Rules(*rope, {}, rules, nullptr));
        EXPECT_NEAR(stretch->spread, 0.3, 1e-12) << text;
        return stretch->curve.at(0.2);
    };
    EXPECT_NEAR(at_a_fifth("own"), 0.015, 1e-12);
    EXPECT_NEAR(at_a_fifth("12-strand HMPE 5 mm"), 0.007, 1e-12);
    EXPECT_NEAR(at_a_fifth("3-strand nylon 5 mm"), 0.05, 1e-12);
}

} // namespace
} // namespace libsplice::testing
