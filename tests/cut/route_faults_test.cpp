// Routes that cannot be read or run, each refused at its place.
#include "jobs.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <ostream>

namespace libsplice::testing {

namespace {

struct Mistake {
    std::string route;
    Code code;
    std::string_view place; ///< what stands there, in `route = ...`
    std::string_view says;
};

void PrintTo(const Mistake& mistake, std::ostream* out) {
    *out << static_cast<int>(mistake.code);
}

class RouteFaults : public ::testing::TestWithParam<Mistake> {};

} // namespace

TEST_P(RouteFaults, AreRefusedAtTheirPlace) {
    const Mistake& mistake = GetParam();
    const std::string route = "route = " + mistake.route;
    const auto run =
        cut_toml("[[line]]\nname = \"a\"\nrope = \"double-braid polyester 5 mm\"\n" + route + "\n");
    ASSERT_EQ(run.faults.size(), 1U);
    const Fault& fault = run.faults.front();
    EXPECT_EQ(fault.code, mistake.code) << fault.text;
    EXPECT_EQ(fault.at.line, 4U);
    EXPECT_EQ(fault.at.column, route.find(mistake.place) + 1) << fault.text;
    EXPECT_EQ(fault.field, "route");
    EXPECT_TRUE(says(fault, mistake.says)) << fault.text;
    ASSERT_EQ(run.lines.size(), 1U) << "a refused line keeps its place";
    EXPECT_TRUE(run.lines.front().fault);
}

INSTANTIATE_TEST_SUITE_P(
    Route, RouteFaults,
    ::testing::Values(
        Mistake{R"({ legs = 11 })", Code::route_not_readable, "route", "a lacing or a purchase"},
        Mistake{R"({ lacing = "zig-zag" })", Code::not_a_choice, "lacing", "zigzag"},
        Mistake{
            R"({ lacing = "zigzag", legs = 11, gap = "80 mm", advanse = "5 mm", advance = "50 mm" })",
            Code::route_not_readable, "advanse", "did you mean \"advance\"?"},
        Mistake{R"({ lacing = "zigzag", legs = 11, gap = "80", advance = "50 mm" })",
                Code::not_a_length, "gap", "unit"},
        Mistake{R"({ lacing = "rail", loops = 0, gap = "45 mm", rail = "32 mm", pitch = "60 mm" })",
                Code::not_a_number, "loops", "loops"},
        Mistake{R"({ lacing = "rail", loops = 3, gap = "18 mm", rail = "32 mm", pitch = "60 mm" })",
                Code::route_impassable, "route", "18.5 mm"},
        Mistake{R"({ lacing = "zigzag", legs = 3, gap = "9 mm", advance = "5 mm", edge = "8 mm" })",
                Code::route_impassable, "route", "the rope cannot pass"},
        Mistake{R"({ points = [["0 m", "0 m"]] })", Code::route_not_readable, "points",
                "at least 2"},
        Mistake{R"({ points = [["0 m", "0 m"], ["3 m"]] })", Code::route_not_readable, "[\"3 m\"]",
                "two or three lengths"},
        Mistake{R"({ points = [["1 m", "0 m"], ["1 m", "0 mm"]] })", Code::route_impassable,
                "[\"1 m\", \"0 mm\"]", "point 2 lies where"},
        Mistake{
            R"({ points = [["0 m", "0 m"], { at = ["9 mm", "0 m"], sheave = "20 mm" }, ["9 mm", "1 m"]] })",
            Code::route_impassable, "{ at", "the bends take 12.5 mm and the leg is 9.0 mm"},
        Mistake{
            R"({ points = [["0 m", "0 m"], { at = ["1 m", "0 m"], sheave = "20 mm" }, ["0 m", "0 m"]] })",
            Code::route_impassable, "{ at", "right back on itself"},
        Mistake{R"({ points = [["0 m", "0 m"], { at = ["1 m", "0 m"], sheave = "20 mm" }] })",
                Code::route_impassable, "{ at", "an end of the line"},
        Mistake{R"({ points_file = "nowhere.csv", points = [["0 m", "0 m"], ["1 m", "0 m"]] })",
                Code::route_not_readable, "route", "not both"},
        Mistake{R"({ purchase = 4, run = "1 m" })", Code::route_not_readable, "route",
                "one size for all"},
        Mistake{R"({ purchase = 4, run = "20 mm", sheave = "20 mm" })", Code::route_impassable,
                "route", "the blocks meet"},
        Mistake{R"({ purchase = 4, run = "1 m", hauled = "2 m", sheave = "20 mm" })",
                Code::route_impassable, "route", "longest state"},
        Mistake{R"({ points = [["0 m", "0 m"], ["90 km", "0 m"]] })", Code::not_a_length, "\"90 km",
                ""},
        Mistake{
            R"({ lacing = "rail", loops = 99999, gap = "2 km", rail = "32 mm", pitch = "60 mm" })",
            Code::not_a_length, "gap", ""}));

TEST(RouteFaults, AllOfARouteAreTold) {
    const auto run = cut_toml("[[line]]\nname = \"a\"\nrope = \"double-braid polyester 5 mm\"\n"
                              "route = { purchase = 0, run = \"x\", sheave = \"-1 mm\" }\n");
    EXPECT_EQ(run.faults.size(), 3U);
}

TEST(RouteFaults, APointsFileIsFaultedAtItsOwnPlace) {
    const std::string text = "name,rope,route\na,double-braid polyester 5 mm,nowhere.csv\n";
    const std::string job = (std::filesystem::temp_directory_path() / "splice-route.csv").string();
    std::ofstream(job) << text;
    auto input = Input::open(job);
    ASSERT_TRUE(input);
    const auto run = cut_input(*input, {}, shipped_book());
    std::filesystem::remove(job);
    ASSERT_EQ(run.faults.size(), 1U);
    EXPECT_EQ(run.faults.front().code, Code::file_unreadable);
    // A job that is no file of its own opens none.
    const auto of_text = cut_text(text);
    ASSERT_EQ(of_text.faults.size(), 1U);
    EXPECT_EQ(of_text.faults.front().code, Code::route_not_readable);
}

TEST(RouteFaults, ARouteLongerThanAnyLineIsRefused) {
    const auto run = cut_toml("[[line]]\nname = \"a\"\nrope = \"double-braid polyester 5 mm\"\n"
                              "route = { purchase = 100, run = \"9000 m\", sheave = \"20 mm\" }\n");
    ASSERT_EQ(run.faults.size(), 1U);
    EXPECT_EQ(run.faults.front().code, Code::value_out_of_range);
}

} // namespace libsplice::testing
