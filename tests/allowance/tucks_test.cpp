// tucked-eye: strands for the tucks, ends left as regulation asks, in laid and plaited rope.
#include "ends.h"

namespace libsplice::testing {
namespace {

TEST(TuckedEye, SyntheticLaidRopeTakesFiveTucks) {
    // 12 mm: 5 tucks of 5.3 D are 318, ends left of 6 D 72, soft eye of 96: 6 pi + 192 =
    // 210.849555922.
    const auto end = make_end("tucked-eye", "3-strand polyester 12 mm");
    EXPECT_NEAR(length_of(end, Item::tucks), 318.0, near);
    EXPECT_NEAR(length_of(end, Item::end_left), 72.0, near);
    EXPECT_NEAR(length_of(end, Item::eye_legs), 210.849555922, near);
    EXPECT_NEAR(length_of(end, Item::cutting_loss), 2.0, near);
    EXPECT_NEAR(in_millimetres(end.total()), 506.849555922, near); // all of them less 96
    EXPECT_NEAR(mark_of(end, MarkName::unlay), 392.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::far_throat), 602.849555922, near);
    EXPECT_NEAR(find_value(end, ValueName::tucks).value_or(0.0), 5.0, 1e-12);
    EXPECT_NEAR(value_of(end, ValueName::unlay_m), 318.0, near);
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 390.0, near);
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.90, 1e-12);
}

TEST(TuckedEye, ManilaTakesThreeTucks) {
    const auto end = make_end("tucked-eye", "3-strand manila 14 mm");
    EXPECT_NEAR(length_of(end, Item::tucks), 222.6, near); // 3 x 5.3 x 14
    const auto more =
        make_end("tucked-eye", "3-strand manila 14 mm", {{"rule", "four-tucks-natural"}});
    EXPECT_NEAR(length_of(more, Item::tucks), 296.8, near); // 4 x 5.3 x 14
    const auto four = make_end("tucked-eye", "3-strand nylon 10 mm", {{"rule", "four-tucks"}});
    EXPECT_NEAR(length_of(four, Item::tucks), 212.0, near); // 4 x 5.3 x 10
}

TEST(TuckedEye, PlaitCountsInPicks) {
    // Five tucks of two picks, a pick of 1 D: 10 x 14.
    const auto end = make_end("tucked-eye", "8-plait nylon 14 mm");
    EXPECT_NEAR(length_of(end, Item::tucks), 140.0, near);
    EXPECT_NEAR(spread_of(end, Item::tucks), 28.0, 1e-9); // 0.2 D a pick
    EXPECT_NEAR(length_of(end, Item::end_left), 84.0, near);
    const auto measured = make_end("tucked-eye", "8-plait nylon 14 mm", {{"pick", "16 mm"}});
    EXPECT_NEAR(length_of(measured, Item::tucks), 160.0, near);
    EXPECT_EQ(spread_of(measured, Item::tucks), 0.0);
}

TEST(TuckedEye, StubIsSixDiametersUnderOneInchAndSixInchesFromThere) {
    const auto left = [](std::string_view rope) {
        return length_of(make_end("tucked-eye", rope), Item::end_left);
    };
    EXPECT_NEAR(left("3-strand polyester 3/4 in"), 114.3, near); // 6 x 19.05
    EXPECT_NEAR(left("3-strand polyester 1 in"), 152.4, near);   // both say so
    EXPECT_NEAR(left("3-strand polyester 1 1/2 in"), 152.4, near);
    EXPECT_NEAR(left("8-plait nylon 1 1/4 in"), 152.4, near);
}

TEST(TuckedEye, FewerTucksThanTheRegulationAsksAreRefused) {
    const auto synthetic = refuse_end("tucked-eye", "3-strand nylon 12 mm", {{"tucks", "3"}});
    EXPECT_EQ(synthetic.code, Code::below_published_minimum);
    EXPECT_EQ(synthetic.field, "tucks");
    EXPECT_TRUE(synthetic.rule.starts_with("osha-1926-251")) << synthetic.rule;
    EXPECT_TRUE(says(synthetic, "minimum of 4")) << synthetic.text;
    make_end("tucked-eye", "3-strand nylon 12 mm", {{"tucks", "4"}});

    const auto natural = refuse_end("tucked-eye", "3-strand manila 12 mm", {{"tucks", "2"}});
    EXPECT_EQ(natural.code, Code::below_published_minimum);
    EXPECT_TRUE(says(natural, "minimum of 3")) << natural.text;
    make_end("tucked-eye", "3-strand manila 12 mm", {{"tucks", "3"}});

    EXPECT_EQ(refuse_end("tucked-eye", "8-plait polyester 12 mm", {{"tucks", "3"}}).code,
              Code::below_published_minimum);
}

TEST(TuckedEye, ShorterStubsThanTheRegulationAsksAreRefused) {
    const auto fault = refuse_end("tucked-eye", "3-strand nylon 12 mm", {{"end_left", "71 mm"}});
    EXPECT_EQ(fault.code, Code::below_published_minimum);
    EXPECT_EQ(fault.field, "end_left");
    EXPECT_TRUE(fault.rule.starts_with("osha-1926-251")) << fault.rule;
    make_end("tucked-eye", "3-strand nylon 12 mm", {{"end_left", "72 mm"}});
    EXPECT_EQ(refuse_end("tucked-eye", "3-strand nylon 1 1/2 in", {{"end_left", "152 mm"}}).code,
              Code::below_published_minimum);
    make_end("tucked-eye", "3-strand nylon 1 1/2 in", {{"end_left", "6 in"}});
}

} // namespace
} // namespace libsplice::testing
