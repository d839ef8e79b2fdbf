// Loads in words: what a table says, and what is told of a wrong one.
#include "libsplice/job/load/read_load.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

struct ReadWords {
    std::optional<LoadWords> words;
    std::vector<Fault> faults;
};

ReadWords read(const std::string& load) {
    ReadWords result;
    const auto document = parse_toml("load = " + load + "\n", "job.toml");
    EXPECT_TRUE(document) << load;
    if (document) {
        result.words = read_load_words(*document->find("load"), result.faults);
    }
    return result;
}

TEST(LoadWords, ASheetHasItsSailAndItsWind) {
    const auto read_of = [](const std::string& load) {
        const auto words = read(load).words;
        EXPECT_TRUE(words && std::holds_alternative<SheetLoad>(*words)) << load;
        return words ? std::get<SheetLoad>(*words) : SheetLoad();
    };
    const SheetLoad knots = read_of(R"({ sheet_of = "18 m²", wind = "20 kn" })");
    EXPECT_NEAR(knots.sail.si(), 18.0, 1e-12);
    EXPECT_NEAR(knots.wind.si(), 20.0 * 1852.0 / 3600.0, 1e-12);
    const SheetLoad metres_a_second = read_of(R"({ sheet_of = "190 ft2", wind = "10 m/s" })");
    EXPECT_NEAR(metres_a_second.sail.si(), 190.0 * 0.09290304, 1e-9);
    EXPECT_NEAR(metres_a_second.wind.si(), 10.0, 1e-12);
}

TEST(LoadWords, AMainsheetMayLeaveOutItsPartsAndItsPlace) {
    const auto words =
        read(R"({ mainsheet = { foot = "2.4 m", luff = "5.6 m" }, wind = "20 kn" })").words;
    ASSERT_TRUE(words);
    const auto& load = std::get<MainsheetLoad>(*words);
    EXPECT_EQ(load.parts, 1);
    EXPECT_EQ(load.from_end, Length());
    const auto aft = read(R"({ mainsheet = { foot = "2.4 m", luff = "5.6 m", from_end = "-0.2 m", )"
                          R"(parts = 4 }, wind = "20 kn" })");
    ASSERT_TRUE(aft.words) << aft.faults.front().text;
    EXPECT_NEAR(std::get<MainsheetLoad>(*aft.words).from_end.si(), -0.2, 1e-12);
    EXPECT_EQ(std::get<MainsheetLoad>(*aft.words).parts, 4);
}

TEST(LoadWords, WhatIsWrongIsToldAtItsPlace) {
    struct Row {
        const char* load;
        Code code;
        const char* says;
    };
    for (
        const Row& row : {
            Row{R"({ sheet_of = "18 m2", wind = 20 })", Code::not_a_number, "20 kn"},
            Row{R"({ sheet_of = "18 m2", wind = "20" })", Code::not_a_number, "10 m/s"},
            Row{R"({ sheet_of = "18 m2", wind = "20 km/h" })", Code::not_a_number, "20 kn"},
            Row{R"({ sheet_of = "18", wind = "20 kn" })", Code::not_a_number, "18 m2"},
            Row{R"({ sheet_of = "18 m2" })", Code::cell_missing, "wind"},
            Row{R"({ sheet_of = "18 m2", wnd = "20 kn", wind = "9 kn" })", Code::not_a_choice,
                "wind"},
            Row{R"({ halyard = "18 m2", wind = "20 kn" })", Code::not_a_choice, "halyard"},
            Row{R"({ wind = "20 kn" })", Code::not_a_choice, "sheet_of"},
            Row{R"({ block = "20 %", angle = 90 })", Code::not_a_tension, "800 N"},
            Row{R"({ block = "800 N", angle = 190 })", Code::not_a_number, "180"},
            Row{R"({ tackle = "800 N", parts = 0, sheaves = 2 })", Code::not_a_number, "parts"},
            Row{R"({ mainsheet = "2.4 m", wind = "20 kn" })", Code::not_a_choice, "foot"},
            Row{R"({ righting = { boat_mass = "107", beam = "2 m", crew_mass = "9 kg" }, arm = "1 m" })",
                Code::not_a_number, "kg"},
            Row{R"({ righting = { boat_mass = "9 kg", beam = "0 m", crew_mass = "9 kg" }, arm = "1 m" })",
                Code::value_out_of_range, "over 0"},
        }) {
        const auto [words, faults] = read(row.load);
        EXPECT_FALSE(words) << row.load;
        ASSERT_FALSE(faults.empty()) << row.load;
        EXPECT_EQ(faults.front().code, row.code) << row.load << ": " << faults.front().text;
        EXPECT_NE(faults.front().text.find(row.says), std::string::npos) << faults.front().text;
        EXPECT_EQ(faults.front().field, "load");
        EXPECT_EQ(faults.front().at.line, 1U);
    }
}

} // namespace
} // namespace libsplice::testing
