// Figures of ropes and of the bench against print and against stated estimates.
#include "lookup.h"

#include <cmath>
#include <numbers>

namespace libsplice {
namespace {

using testing::figure;
using testing::is_absent;
using testing::spread_between;
using testing::value;
using enum FigureId;

const std::string hmpe = "braid-12 HMPE 5 mm";
const std::string covered = "double-braid polyester 8 mm";

TEST(PrintedRope, Fids) {
    EXPECT_DOUBLE_EQ(value("", hmpe, fid), 21);        // New England Ropes; 10.5 in for 1/2 in
    EXPECT_DOUBLE_EQ(value("", hmpe, fid_metric), 22); // Cortland: 267 mm for 12 mm
    EXPECT_EQ(figure("", hmpe, fid_metric).unit, FigureUnit::diameters);
}

TEST(PrintedRope, BraidConstantOfFifteenDegrees) {
    const double tangent = std::tan(15.0 * std::numbers::pi / 180.0);
    EXPECT_NEAR(value("", hmpe, braid_constant), 2.0 * tangent * tangent, 1e-10);
    EXPECT_DOUBLE_EQ(value("", covered, braid_constant),
                     value("", "core-dependent HMPE 6 mm", braid_constant));
    EXPECT_TRUE(is_absent("", "laid-3 manila 14 mm", braid_constant));
    EXPECT_DOUBLE_EQ(value("", hmpe, take_up_spread), 2.5);
}

TEST(PrintedRope, CoreAndCover) {
    EXPECT_DOUBLE_EQ(value("", covered, core_share), 0.7);
    EXPECT_DOUBLE_EQ(figure("", covered, core_share).sd, spread_between(0.6, 0.8));
    EXPECT_DOUBLE_EQ(figure("", covered, milk_out).number(), 0.004);
    EXPECT_DOUBLE_EQ(figure("", covered, milk_out).sd, spread_between(0.3, 0.5));
    EXPECT_DOUBLE_EQ(figure("", covered, minimum_milk_out).length({}).si(), 0.05);
    EXPECT_TRUE(is_absent("", hmpe, core_share));
}

TEST(PrintedRope, Bedding) {
    const Figure nylon = figure("", "laid-3 nylon 12 mm", bedding); // Practical Sailor: 4 to 6 %
    EXPECT_DOUBLE_EQ(nylon.number(), 0.05);
    EXPECT_DOUBLE_EQ(nylon.sd, spread_between(4, 6));
    EXPECT_EQ(nylon.origin, SpreadOrigin::printed_range);
    EXPECT_DOUBLE_EQ(value("", hmpe, bedding), 1.25);
    EXPECT_DOUBLE_EQ(figure("", hmpe, bedding).sd, spread_between(0.5, 2));
    EXPECT_TRUE(is_absent("", covered, bedding));
}

TEST(PrintedRope, Slack) {
    for (const auto& rope : {hmpe, covered}) {
        EXPECT_DOUBLE_EQ(value("", rope, slack), 2) << rope;
        EXPECT_DOUBLE_EQ(figure("", rope, slack).sd, 1) << rope;
    }
    EXPECT_TRUE(is_absent("", "shock-cord rubber 5 mm", slack));
    EXPECT_TRUE(is_absent("", "wire stainless-steel 4 mm", slack));
}

TEST(PrintedRope, StretchAtAFifthOfTheBreakingStrength) {
    struct Row {
        std::string rope;
        double stretch;
        double sd;
    };
    // The blog of 2016: under 0.6, 2.5 and 8.5 %. The others are recollections.
    for (const auto& row :
         {Row{"core-dependent HMPE 6 mm", 0.6, 0}, Row{"braid-12 LCP 5 mm", 0.6, 0},
          Row{covered, 2.5, 0}, Row{"double-braid nylon 10 mm", 8.5, 0}, Row{hmpe, 0.70, 0},
          Row{"braid-12 aramid 5 mm", 1.0, spread_between(0.8, 1.2)},
          Row{"laid-3 polyester 12 mm", 2.5, spread_between(2, 3)},
          Row{"laid-3 nylon 12 mm", 14, spread_between(12, 16)}}) {
        const Figure at_load = figure("", row.rope, stretch);
        EXPECT_DOUBLE_EQ(at_load.value, row.stretch) << row.rope;
        EXPECT_NEAR(at_load.sd, row.sd, 1e-12) << row.rope;
        EXPECT_EQ(at_load.unit, FigureUnit::percent);
        EXPECT_DOUBLE_EQ(figure("", row.rope, stretch_load).number(), 0.20) << row.rope;
    }
    EXPECT_TRUE(is_absent("", "plait-8 polyester 14 mm", stretch));
}

TEST(PrintedBench, CutsWhippingsAndTape) {
    EXPECT_DOUBLE_EQ(figure("", hmpe, heat_cut).length({}).si(), 0.004);
    EXPECT_DOUBLE_EQ(figure("", hmpe, heat_cut).sd, spread_between(3, 5));
    EXPECT_DOUBLE_EQ(figure("", hmpe, shear_cut).length({}).si(), 0.002);
    EXPECT_DOUBLE_EQ(value("", hmpe, whipping), 1.5);
    EXPECT_DOUBLE_EQ(value("", hmpe, whipping_offset), 1);
    EXPECT_DOUBLE_EQ(figure("", hmpe, tape_fixed).length({}).si(), 0.0003);
    EXPECT_DOUBLE_EQ(figure("", hmpe, tape_share).number(), 0.0002); // 0.2 mm per metre
}

} // namespace
} // namespace libsplice
