// Eyes that are hung, closed, slid, stitched or seized: row by row against arithmetic by hand.
#include "ends.h"

namespace libsplice::testing {
namespace {

constexpr std::string_view hollow = "12-strand HMPE 4 mm";
constexpr double pi = 3.14159265358979;

TEST(LarkedEye, ThroatLandsShortOfTheFlatEye) {
    // Eye 80, bar 20: 80 - 2 (20 + 4) - 1.5 x 4 = 26 from the load side of the bar.
    const auto end = make_end("larked-eye", hollow, {{"eye", "80 mm"}, {"pin", "20 mm"}});
    EXPECT_NEAR(length_of(end, Item::throat_to_bearing), -26.0, near);
    EXPECT_NEAR(spread_of(end, Item::throat_to_bearing), 4.0, near); // 1 D
    EXPECT_NEAR(value_of(end, ValueName::bearing_m), 26.0, near);
    EXPECT_NEAR(length_of(end, Item::eye_legs), 160.0 + 2.0 * pi, near); // pressed flat
    EXPECT_NEAR(length_of(end, Item::tail), 288.0, near);
    EXPECT_EQ(find_row(end, Item::soft_eye), nullptr);
}

TEST(LarkedEye, DefaultEyeStandsEightDiametersOff) {
    const auto end = make_end("larked-eye", hollow, {{"pin", "20 mm"}});
    EXPECT_NEAR(value_of(end, ValueName::eye_m), 86.0, near); // 48 + 6 + 32
    EXPECT_NEAR(value_of(end, ValueName::bearing_m), 32.0, near);
}

TEST(LarkedEye, BarThatIsNotKnownHasASpread) {
    const auto end = make_end("larked-eye", hollow);
    EXPECT_NEAR(spread_of(end, Item::soft_eye), 9.237604307, 1e-6); // 2 x 8 over the root of 3
    EXPECT_TRUE(cautions_about(end, "bar's diameter"));
}

TEST(LarkedEye, EyeUsedUpOnTheBarIsRefused) {
    // Used: 48 + 6; one rope's thickness must be left.
    const auto fault = refuse_end("larked-eye", hollow, {{"eye", "57 mm"}, {"pin", "20 mm"}});
    EXPECT_EQ(fault.code, Code::eye_too_small);
    EXPECT_TRUE(says(fault, "58")) << fault.text;
}

const FieldList ring{{"groove", "20 mm"}, {"bore", "12 mm"}};

TEST(RingEye, IsMeasuredToTheBore) {
    // The closing starts 10 + 2 + 4 from the ring's centre and is 12 long: 38 from the groove's far
    // side to the throat, 34 from the bore's, as the wall is 4.
    const auto end = make_end("ring-eye", hollow, ring);
    EXPECT_NEAR(value_of(end, ValueName::eye_m), 38.0, near);
    EXPECT_NEAR(length_of(end, Item::throat_to_bearing), -34.0, near);
    EXPECT_NEAR(value_of(end, ValueName::seizing_m), 12.0, near);
}

TEST(RingEye, LegsLieTogetherFromTheClosingOn) {
    // Round the ring: R = 12, h = 16, w = 2, rho = root of 260, and two legs of 12.
    const double rho = std::sqrt(260.0);
    const double beta = std::asin(12.0 / rho) - std::atan(0.125);
    const double round = 12.0 * (pi + 2.0 * beta) + 2.0 * std::sqrt(260.0 - 144.0);
    const auto end = make_end("ring-eye", hollow, ring);
    EXPECT_NEAR(length_of(end, Item::eye_legs), round + 24.0, near);
    FieldList longer = ring;
    longer.push_back({"eye", "48 mm"});
    EXPECT_NEAR(length_of(make_end("ring-eye", hollow, longer), Item::eye_legs), round + 44.0,
                near);
}

TEST(RingEye, StitchingTakesSevenDiameters) {
    FieldList stitched = ring;
    stitched.push_back({"closing", "stitched"});
    const auto end = make_end("ring-eye", hollow, stitched);
    EXPECT_NEAR(value_of(end, ValueName::overlap_m), 28.0, near);
    EXPECT_NEAR(value_of(end, ValueName::eye_m), 54.0, near);
    EXPECT_NE(end.steps.data(), make_end("ring-eye", hollow, ring).steps.data());
}

TEST(RingEye, RefusesWhatIsNoRing) {
    EXPECT_EQ(refuse_end("ring-eye", hollow).code, Code::field_missing);
    EXPECT_EQ(refuse_end("ring-eye", hollow, {{"groove", "12 mm"}, {"bore", "12 mm"}}).field,
              "bore");
    FieldList tight = ring;
    tight.push_back({"eye", "37 mm"});
    EXPECT_EQ(refuse_end("ring-eye", hollow, tight).code, Code::eye_too_small);
}

TEST(AdjustableEye, TailKeepsItsSectionInside) {
    const auto end = make_end("adjustable-eye", hollow);
    EXPECT_NEAR(length_of(end, Item::tail), 288.0, near);
    // A tail that slides has drawn out: 288/root(1 - 0.135) - 288, and less by K = 0.095.
    EXPECT_NEAR(length_of(end, Item::take_up), 21.659518408, near);
    EXPECT_NEAR(spread_of(end, Item::take_up), 6.920639619, near);
    EXPECT_NEAR(value_of(end, ValueName::taper_m), 0.0, near);
    EXPECT_EQ(find_row(end, Item::settling), nullptr);
    // Where the tail's inside part ends is where it comes out, when it is spliced: 288/root 0.75.
    EXPECT_NEAR(mark_of(end, MarkName::exit) - mark_of(end, MarkName::far_throat), 332.553755053,
                near);
    EXPECT_TRUE(std::isnan(mark_of(end, MarkName::bury_end)));
}

TEST(AdjustableEye, EndsInAFigureEight) {
    const auto end = make_end("adjustable-eye", hollow);
    EXPECT_NEAR(length_of(end, Item::knot), 57.6072, near);  // 13.716 x 1.05 x 4
    EXPECT_NEAR(length_of(end, Item::end_left), 80.0, near); // 20 D past a stopper in bare HMPE
    EXPECT_NEAR(mark_of(end, MarkName::near_throat), 2.0 + 80.0 + 57.6072 + 14.0 + 288.0, near);
}

TEST(AdjustableEye, LettingOutDrawsTwice) {
    const auto still = make_end("adjustable-eye", hollow);
    const auto slides = make_end("adjustable-eye", hollow, {{"travel", "50 mm"}});
    EXPECT_NEAR(length_of(slides, Item::travel), 100.0, near);
    EXPECT_EQ(slides.total() - still.total(), 100'000'000);
}

TEST(AdjustableEye, ShortBuryIsRefusedByItsOwnName) {
    const auto fault = refuse_end("adjustable-eye", hollow, {{"bury", "44 D"}});
    EXPECT_EQ(fault.code, Code::below_published_minimum);
    EXPECT_EQ(fault.field, "bury");
}

TEST(StitchedEye, ThinRopeIsBastedNoLongerThanIsPublished) {
    const auto end = make_end("stitched-eye", "double-braid polyester 6 mm");
    EXPECT_NEAR(length_of(end, Item::tail), 75.0, near); // 15 D would be 90 mm
    EXPECT_NEAR(mark_of(end, MarkName::lap_end) - mark_of(end, MarkName::far_throat), 75.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::near_throat), 79.0, near); // 4 mm lost to the heat
    ASSERT_TRUE(end.retained);
    EXPECT_DOUBLE_EQ(end.retained->share, 0.72);
    EXPECT_FALSE(cautions_about(end, "runs open"));
    EXPECT_TRUE(cautions_about(
        make_end("stitched-eye", "double-braid polyester 6 mm", {{"overlap", "76 mm"}}),
        "runs open"));
}

TEST(StitchedEye, ThickerRopeIsStitchedRound) {
    const auto end = make_end("stitched-eye", "double-braid polyester 8 mm");
    EXPECT_NEAR(length_of(end, Item::tail), 120.0, near); // 15 D
    ASSERT_TRUE(end.retained);
    EXPECT_DOUBLE_EQ(end.retained->share, 0.90);
    EXPECT_NE(end.steps[2].text.find("round both parts"), std::string_view::npos);
}

TEST(StitchedEye, InHmpeIsCautionedAndRefusedForAPerson) {
    const auto end = make_end("stitched-eye", hollow);
    EXPECT_FALSE(end.retained);
    EXPECT_TRUE(cautions_about(end, "splice it"));
    EXPECT_TRUE(std::ranges::any_of(end.cautions, [](const Caution& caution) {
        return caution.weight == Caution::Weight::refused_for_person;
    }));
}

TEST(RingEye, SeizingOfHmpeHasItsPublishedCount) {
    const auto end = make_end("ring-eye", hollow, {{"groove", "20 mm"}, {"bore", "12 mm"}});
    EXPECT_DOUBLE_EQ(value_of(end, ValueName::turns), 30000.0); // a count, read as metres
    EXPECT_TRUE(cautions_about(end, "60 %"));
}

TEST(SeizedEye, TwoSeizingsLieOnItsTail) {
    const auto end = make_end("seized-eye", "12-strand polyester 4 mm");
    EXPECT_NEAR(length_of(end, Item::tail), 48.0, near); // 12 D
    EXPECT_NEAR(value_of(end, ValueName::seizing_m), 12.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::seizing_end) - mark_of(end, MarkName::far_throat), 12.0,
                near);
    EXPECT_NEAR(mark_of(end, MarkName::lap_end) - mark_of(end, MarkName::far_throat), 48.0, near);
    EXPECT_TRUE(cautions_about(make_end("seized-eye", hollow), "slides"));
}

TEST(SeizedEye, TailShorterThanItsSeizingIsRefused) {
    const auto fault = refuse_end("seized-eye", hollow, {{"tail", "10 mm"}});
    EXPECT_EQ(fault.code, Code::field_out_of_range);
    EXPECT_EQ(fault.field, "tail");
}

} // namespace
} // namespace libsplice::testing
