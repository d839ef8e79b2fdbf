// Areas, winds, masses and angles as people write them.
#include "libsplice/units/sail.h"

#include <gtest/gtest.h>

#include <numbers>

namespace libsplice::testing {
namespace {

TEST(SailUnits, AreReadInBothSystems) {
    EXPECT_DOUBLE_EQ(read_area("18 m2")->si(), 18);
    EXPECT_DOUBLE_EQ(read_area(" 18m² ")->si(), 18);
    EXPECT_NEAR(read_area("190 ft2")->si(), 17.6515776, 1e-9);
    EXPECT_NEAR(read_speed("20 kn")->si(), 10.288889, 1e-6);
    EXPECT_DOUBLE_EQ(read_speed("10 m/s")->si(), 10);
    EXPECT_DOUBLE_EQ(read_mass("107 kg")->si(), 107);
    EXPECT_NEAR(read_mass("236 lb")->si(), 107.0478, 1e-4);
    EXPECT_DOUBLE_EQ(read_degrees("90")->si(), std::numbers::pi / 2);
    EXPECT_DOUBLE_EQ(read_degrees("90°")->si(), std::numbers::pi / 2);
}

TEST(SailUnits, AreRefusedWhereTheyCouldBeMistaken) {
    for (const auto* text : {"20", "20 m", "20 knots per hour", "-1 kn", "", "kn", "1e999 kn"}) {
        EXPECT_FALSE(read_speed(text)) << text;
    }
    for (const auto* text : {"18", "0 m2", "-3 m2", "18 m", "18 m3"}) {
        EXPECT_FALSE(read_area(text)) << text;
    }
    for (const auto* text : {"107", "0 kg", "107 g"}) {
        EXPECT_FALSE(read_mass(text)) << text;
    }
    for (const auto* text : {"181", "-1", "90 rad"}) {
        EXPECT_FALSE(read_degrees(text)) << text;
    }
}

TEST(SailUnits, SayWhatToWrite) {
    EXPECT_NE(read_speed("20").error().text.find("20 kn or 10 m/s"), std::string::npos);
}

} // namespace
} // namespace libsplice::testing
