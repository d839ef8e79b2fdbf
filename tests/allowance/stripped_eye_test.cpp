// stripped-eye: every length of the core's splice counts in core diameters, the cover's in the
// rope's.
#include "ends.h"

namespace libsplice::testing {
namespace {

// A rope of 6 mm with a core of 4.2 mm. Soft eye 8 x 4.2 = 33.6: half a circle of the core and two
// legs, 2.1 pi + 67.2 = 73.797344573. Tail 72 x 4.2 = 302.4, the last third thinned evenly: with
// K = 0.25 201.6/0.8660254 + 201.6/1.8660254 - 302.4 = 38.4247429255 as spliced; once it was
// loaded, with 0.135, 201.6/0.9300538 + 201.6/1.9300538 - 302.4 = 18.8147118016.
const FieldList known_core{{"core", "4.2 mm"}};
constexpr std::string_view rope = "core-dependent HMPE 6 mm";

// The cover's section is (6/4.2)^2 - 1 = 1.040816327 of the core's. Its tail of 30 x 6 = 180 mm is
// thinned over the last half: with K = 0.135 root(1 - K 1.040816327) = 0.9270867, and the core
// takes up 90/0.9270867 + 180/1.9270867 - 180; with K = 0.095 it is 7.1512658145.
constexpr double cover_take_up = 10.4835375233;
constexpr double take_up = 38.4247429255;

TEST(StrippedEye, RowsAreTheArithmetic) {
    const auto end = make_end("stripped-eye", rope, known_core);
    EXPECT_NEAR(length_of(end, Item::eye_legs), 73.797344573, near);
    EXPECT_NEAR(length_of(end, Item::throat_to_bearing), -33.6, near);
    EXPECT_NEAR(length_of(end, Item::tail), 302.4, near);
    EXPECT_NEAR(length_of(end, Item::take_up), take_up, near);
    EXPECT_NEAR(length_of(end, Item::settling), 18.8147118016 - take_up, near);
    EXPECT_NEAR(length_of(end, Item::cover_take_up), cover_take_up, near);
    EXPECT_NEAR(length_of(end, Item::cutting_loss), 2.0, near);
    EXPECT_NEAR(spread_of(end, Item::cover_take_up), cover_take_up - 7.1512658145, near);
    // 73.797344573 - 33.6 + 302.4 + 18.8147118016 + 10.4835375233 + 2
    EXPECT_NEAR(in_millimetres(end.total()), 373.8955938979, 2.0 * near);
    EXPECT_TRUE(end.milks_cover);
    EXPECT_NEAR(value_of(end, ValueName::cover_tail_m), 180.0, near);
}

TEST(StrippedEye, CoverEndsBeyondBothBuries) {
    const auto end = make_end("stripped-eye", rope, known_core);
    // Bury 302.4 + 38.4247429255, 5 core diameters of bare core, the cover's tail and its take-up.
    const double from_throat = 302.4 + take_up + 21.0 + 180.0 + cover_take_up;
    const double far_throat = 2.0 + 302.4 + 73.797344573;
    EXPECT_NEAR(mark_of(end, MarkName::cover_end), far_throat + from_throat, 2.0 * near);
    EXPECT_NEAR(in_millimetres(end.bury_reach), from_throat, 2.0 * near);
}

TEST(StrippedEye, CoverEndIsMeasuredOnTheFinishedLine) {
    const auto end = make_end("stripped-eye", rope, {{"core", "4.2 mm"}, {"cover_end", "900 mm"}});
    // 900 from the bearing point: 866.4 from the throat, and the core is shorter over both buries.
    const double far_throat = 2.0 + 302.4 + 73.797344573;
    EXPECT_NEAR(mark_of(end, MarkName::cover_end), far_throat + 866.4 + take_up + cover_take_up,
                2.0 * near);
}

TEST(StrippedEye, CoverEndOverTheBuryIsRefused) {
    // The shortest is bury, gap and cover's tail without their take-up, and the eye:
    // 302.4 + 21 + 180 + 33.6 = 537.
    const auto fault =
        refuse_end("stripped-eye", rope, {{"core", "4.2 mm"}, {"cover_end", "536 mm"}});
    EXPECT_EQ(fault.code, Code::strip_does_not_fit);
    EXPECT_TRUE(says(fault, "537")) << fault.text;
    make_end("stripped-eye", rope, {{"core", "4.2 mm"}, {"cover_end", "538 mm"}});
}

TEST(StrippedEye, CoreOfTheRopesRecordIsKnown) {
    const auto end = make_end("stripped-eye", "demo-cd-hmpe-6");
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 302.4, near);
    EXPECT_FALSE(cautions_about(end, "assumed"));
}

TEST(StrippedEye, AssumedCoreIsSevenTenthsAndCautioned) {
    const auto end = make_end("stripped-eye", rope);
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 302.4, near); // 0.7 x 6 = 4.2
    EXPECT_TRUE(cautions_about(end, "assumed"));
    // 0.6 to 0.8 of 6 mm: 0.6 / sqrt 3 = 0.346410162 of core, and a soft eye grows by half of pi
    // times that.
    EXPECT_NEAR(spread_of(end, Item::eye_legs), 0.5441398, 1e-6);
    EXPECT_FALSE(cautions_about(make_end("stripped-eye", rope, known_core), "assumed"));
}

TEST(StrippedEye, CoreThickerThanTheRopeIsRefused) {
    for (const std::string_view core : {"6 mm", "7 mm"}) {
        const auto fault = refuse_end("stripped-eye", rope, {{"core", core}});
        EXPECT_EQ(fault.code, Code::field_out_of_range);
        EXPECT_EQ(fault.field, "core");
    }
}

TEST(StrippedEye, CoverTooThickForAThinCoreIsRefused) {
    // A core of 2 mm in 6 mm rope: section 8, and K times 8 is over 1.
    const auto fault = refuse_end("stripped-eye", rope, {{"core", "2 mm"}});
    EXPECT_EQ(fault.code, Code::field_out_of_range);
    EXPECT_EQ(fault.field, "core");
}

TEST(StrippedEye, DoubleBraidPolyesterBuriesTwoFidsOfItsCore) {
    const auto end = make_end("stripped-eye", "double-braid polyester 10 mm");
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 294.0, near); // 42 x 7
    // 42 D of 7 mm, a third thinned evenly: 3.6148363 D with K = 0.18, 1.8832680 with 0.10.
    EXPECT_NEAR(length_of(end, Item::settling), -7.0 * 1.7315682225, near);
}

} // namespace
} // namespace libsplice::testing
