// Printed values as they are written, and what the shipped files of cases are made of.
#include "libsplice/base/input.h"

#include "cli/check/printed_value.h"
#include "cli/check/published_cases.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace libsplice::testing {

using namespace cli;
namespace {

void expect_printed(std::string_view text, Measure measure, double value, double half_digit) {
    const auto printed = read_printed_value(text, measure);
    ASSERT_TRUE(printed) << text << ": " << printed.error().text;
    EXPECT_NEAR(printed->value, value, 1e-12) << text;
    EXPECT_NEAR(printed->half_digit, half_digit, 1e-12) << text;
}

TEST(PrintedValue, KnowsItsLastDigit) {
    expect_printed("360 mm", Measure::length, 0.36, 0.0005);
    expect_printed("10.5 in", Measure::length, 0.2667, 0.00127);
    expect_printed("3 3/8 in", Measure::length, 0.085725, 0.0015875);
    expect_printed("12 ft 6 in", Measure::length, 3.81, 0.0127);
    expect_printed("-5.760 mm", Measure::length, -0.00576, 0.0000005);
    expect_printed("25.2 kN", Measure::force, 25200.0, 50.0);
    expect_printed("43.4 %", Measure::share, 0.434, 0.0005);
    expect_printed("23.27 deg", Measure::degrees, 23.27, 0.005);
    expect_printed("3", Measure::number, 3.0, 0.5);
}

TEST(PrintedValue, IsOfTheSortThatIsAskedFor) {
    EXPECT_FALSE(read_printed_value("360", Measure::length));
    EXPECT_FALSE(read_printed_value("43.4", Measure::share));
    EXPECT_FALSE(read_printed_value("30 %", Measure::force));
    EXPECT_FALSE(read_printed_value("3 mm", Measure::number));
    EXPECT_FALSE(read_printed_value("", Measure::number));
    EXPECT_FALSE(read_printed_value("deg", Measure::degrees));
}

TEST(PrintedValue, TakesATolerance) {
    const PrintedValue printed{0.5, 0.0};
    EXPECT_NEAR(read_tolerance("2 %", Measure::length, printed).value(), 0.01, 1e-12);
    EXPECT_NEAR(read_tolerance("2 mm", Measure::length, printed).value(), 0.002, 1e-12);
    EXPECT_FALSE(read_tolerance("-2 mm", Measure::length, printed));
}

TEST(PublishedFiles, AreMostlyNotTheRowsOfOurTables) {
    FaultSink faults;
    const std::vector<std::string> folders{LIBSPLICE_TABLES_DIR};
    const auto catalogue = Catalogue::load(folders, faults);
    ASSERT_TRUE(catalogue);
    std::size_t all = 0;
    std::size_t rows = 0;
    for (const auto& entry : std::filesystem::directory_iterator(LIBSPLICE_PUBLISHED_DIR)) {
        if (entry.path().extension() != ".toml") {
            continue; // instances of cutting stock, which tests/reel reads
        }
        const std::string name = entry.path().string();
        const auto text = Input::open(name)->read_all();
        const auto document = parse_toml(*text, name);
        ASSERT_TRUE(document) << name;
        for (const auto& one : read_cases(*document, *catalogue, faults).cases) {
            ++all;
            rows += one.printed_row ? 1 : 0;
        }
        EXPECT_EQ(*document->find("source")->text(), entry.path().stem()) << name;
    }
    EXPECT_TRUE(faults.empty());
    EXPECT_GE(all, 25U);
    EXPECT_LE(rows * 3, all);
}

} // namespace
} // namespace libsplice::testing
