// core-eye: the tail counts in diameters of the whole rope, its braid is the core's.
#include "ends.h"

#include <algorithm>

namespace libsplice::testing {
namespace {

// A rope of 10 mm with a core of 7 mm, on a pin of 20 mm. The rope round an eye of 60 mm:
// h = 60 - 10 = 50, w = 5, R = 15: rho = 50.24937811, beta = asin(0.298511157) - atan(0.1).
const FieldList usual{{"core", "7 mm"}, {"eye", "60 mm"}, {"pin", "20 mm"}};
constexpr std::string_view rope = "core-dependent HMPE 10 mm";

TEST(CoreEye, TailIsTwoAndAHalfFidsOfTheWholeRope) {
    const auto end = make_end("core-eye", rope, usual);
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 525.0, near); // 2.5 x 21 x 10
    EXPECT_NEAR(value_of(end, ValueName::taper_m), 175.0, near);
    EXPECT_EQ(source_of(end, Item::tail), "cortland-core-dependent-2");
    EXPECT_NEAR(value_of(end, ValueName::fid_m), 220.0, near); // 22 x 10
    EXPECT_NEAR(value_of(end, ValueName::slip_knot_m), 2100.0, near);
}

TEST(CoreEye, RowsAreTheArithmetic) {
    const auto end = make_end("core-eye", rope, usual);
    const double beta = std::asin(15.0 / std::sqrt(2525.0)) - std::atan(0.1);
    const double round = 15.0 * (3.14159265358979 + 2.0 * beta) + 2.0 * std::sqrt(2525.0 - 225.0);
    EXPECT_NEAR(length_of(end, Item::eye_legs), round, near);
    EXPECT_NEAR(length_of(end, Item::throat_to_bearing), -60.0, near);
    // 350 in full section and 175 thinned evenly, K = 0.25: 350/0.8660254 + 350/1.8660254 - 525.
    // With K = 0.20 it is 51.0643118, with 0.135, once it was loaded, 32.6644302.
    EXPECT_NEAR(length_of(end, Item::take_up), 66.7096231345, near);
    EXPECT_NEAR(spread_of(end, Item::take_up), 66.7096231345 - 51.0643118126, near);
    EXPECT_NEAR(length_of(end, Item::settling), 32.6644302110 - 66.7096231345, near);
    EXPECT_TRUE(end.milks_cover);
}

TEST(CoreEye, CrossingLiesBelowTheThroatWhereTheCoreIsLedThroughTheEye) {
    const auto end = make_end("core-eye", rope, usual);
    EXPECT_NEAR(value_of(end, ValueName::entry_m), 70.0, near); // a third of a fid
    EXPECT_NEAR(length_of(end, Item::crossing_below), 35.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::core_entry) - mark_of(end, MarkName::far_throat), 70.0,
                near);
    EXPECT_NEAR(mark_of(end, MarkName::exit) - mark_of(end, MarkName::core_entry), 700.0, near);
}

TEST(CoreEye, CoreThatIsKeptInTheEyeTakesTheCoversTail) {
    const auto end =
        make_end("core-eye", rope,
                 {{"core", "7 mm"}, {"eye", "60 mm"}, {"pin", "20 mm"}, {"way", "core-kept"}});
    EXPECT_EQ(find_row(end, Item::crossing_below), nullptr); // the core is not led through the eye
    EXPECT_NEAR(mark_of(end, MarkName::near_throat) - mark_of(end, MarkName::cover_tail_end), 100.0,
                near);
    EXPECT_NEAR(mark_of(end, MarkName::exit) - mark_of(end, MarkName::far_throat), 700.0, near);
    EXPECT_TRUE(std::ranges::is_sorted(end.marks, {}, &Mark::from_tail_end));
}

TEST(CoreEye, CoversTailIsNoLongerThanTheTailThatItLiesIn) {
    const auto end = make_end("core-eye", "core-dependent HMPE 3 mm",
                              {{"core", "2 mm"}, {"tail", "95 mm"}, {"way", "core-kept"}});
    EXPECT_NEAR(mark_of(end, MarkName::near_throat) - mark_of(end, MarkName::cover_tail_end), 95.0,
                near);
}

TEST(CoreEye, CoverGoesOverTheSwollenCore) {
    const auto end = make_end("core-eye", rope, usual);
    EXPECT_NEAR(value_of(end, ValueName::over_bury_m), 12.206555616, near); // root of 100 + 49
}

TEST(CoreEye, NamedSheets) {
    const auto rope_inc = make_end("core-eye", rope, {{"core", "7 mm"}, {"rule", "two-fids"}});
    EXPECT_NEAR(value_of(rope_inc, ValueName::tail_m), 420.0, near);
    EXPECT_NEAR(value_of(rope_inc, ValueName::exit_m), 630.0, near);
    const auto merry =
        make_end("core-eye", rope, {{"core", "7 mm"}, {"rule", "two-fids-and-short-section"}});
    EXPECT_NEAR(value_of(merry, ValueName::exit_m), 700.0, near);
    EXPECT_NEAR(value_of(merry, ValueName::taper_m), 70.0, near);
}

TEST(CoreEye, LeastTailIsCountedInTheCore) {
    // 45 core diameters of 9.5 mm are 427.5 mm, more than two fids of 210 mm.
    const auto fault = refuse_end("core-eye", rope, {{"core", "9.5 mm"}, {"rule", "two-fids"}});
    EXPECT_EQ(fault.code, Code::below_published_minimum);
    EXPECT_FALSE(fault.rule.empty());
}

TEST(CoreEye, ThinCoveredRopeIsCautioned) {
    EXPECT_TRUE(cautions_about(make_end("core-eye", "core-dependent HMPE 4 mm"), "stripped-eye"));
    EXPECT_FALSE(cautions_about(make_end("core-eye", "core-dependent HMPE 5 mm"), "stripped-eye"));
    EXPECT_TRUE(cautions_about(make_end("core-eye", "core-dependent HMPE 5 mm"), "assumed"));
}

TEST(CoverCoreEye, UsesThirtySixDiametersBesidesTheEye) {
    // 1/2 in, circumference 1 1/2 in: 18 in besides the eye, as the maker's sheet has it.
    const auto end = make_end("cover-core-eye", "double-braid polyester 1/2 in");
    EXPECT_NEAR(length_of(end, Item::tail) + length_of(end, Item::take_up), 18.0 * 25.4, near);
    EXPECT_NEAR(value_of(end, ValueName::entry_m), 88.9, near);         // 7 D
    EXPECT_NEAR(value_of(end, ValueName::exit_m), 35.0 * 12.7, near);   // and 28 D on
    EXPECT_NEAR(mark_of(end, MarkName::taper_start), 2.0 + 88.9, near); // last third of a fid
    EXPECT_NEAR(value_of(end, ValueName::core_out_m), 88.9, near);      // another third
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.80, 1e-12); // below the up to 90 % of a sheet for used rope
    EXPECT_TRUE(end.milks_cover);
    EXPECT_FALSE(make_end("cover-core-eye", "double-braid HMPE 12 mm").retained);
}

TEST(CoverCoreEye, IsForEightMillimetresAndUp) {
    EXPECT_TRUE(cautions_about(make_end("cover-core-eye", "double-braid polyester 6 mm"), "knot"));
    EXPECT_FALSE(cautions_about(make_end("cover-core-eye", "double-braid polyester 8 mm"), "knot"));
}

TEST(CoverCoreEye, TailShorterThanItsTaperIsRefused) {
    const auto fault =
        refuse_end("cover-core-eye", "double-braid polyester 10 mm", {{"tail", "69 mm"}});
    EXPECT_EQ(fault.code, Code::taper_longer_than_tail);
}

TEST(ParallelCoreEye, MarksAreTheSheets) {
    const auto end = make_end("parallel-core-eye", "parallel-core aramid 10 mm");
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 140.0, near); // fid less its short section
    EXPECT_NEAR(value_of(end, ValueName::exit_m), 210.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::exit) - mark_of(end, MarkName::far_throat), 210.0, near);
    EXPECT_NEAR(length_of(end, Item::crossing_below), 70.0, near); // a third of a fid
    EXPECT_NEAR(length_of(end, Item::take_up), 30.0, near);
    EXPECT_NEAR(spread_of(end, Item::take_up), 17.320508, 1e-5); // 3 D over the root of 3
    EXPECT_TRUE(cautions_about(end, "estimate"));
}

TEST(ParallelCoreEye, ExitBeforeTheCoresEntryIsRefused) {
    const auto fault =
        refuse_end("parallel-core-eye", "parallel-core aramid 10 mm", {{"exit", "70 mm"}});
    EXPECT_EQ(fault.code, Code::field_out_of_range);
    EXPECT_EQ(fault.field, "exit");
}

} // namespace
} // namespace libsplice::testing
