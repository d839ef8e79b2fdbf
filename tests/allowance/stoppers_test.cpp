// Stopper knots and the ball, row by row against arithmetic by hand.
#include "ends.h"

namespace libsplice::testing {
namespace {

double knot_of(std::string_view kind, std::string_view rope, const FieldList& fields = {}) {
    return length_of(make_end(kind, rope, fields), Item::knot);
}

TEST(Overhand, RowsAreTheTightKnotTimesTheHand) {
    // Laid rope of 10 mm: 10.098 x 1.1 x 10 = 111.078; body 25, tail 80, heat 4.
    const auto end = make_end("overhand", "3-strand polyester 10 mm");
    EXPECT_NEAR(length_of(end, Item::knot), 111.078, near);
    EXPECT_NEAR(length_of(end, Item::knot_body), 25.0, near);
    EXPECT_NEAR(length_of(end, Item::tail), 80.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::knot_face), 220.078, near);
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.45, 1e-12);
    EXPECT_FALSE(make_end("overhand", "double-braid polyester 10 mm").retained);
}

TEST(DoubleOverhand, UsesMoreThanAnOverhand) {
    // 17.198 x 1.15 x 10 = 197.777 in covered rope; the barrel form 17.307 x 11.5 = 199.0305.
    EXPECT_NEAR(knot_of("double-overhand", "double-braid polyester 10 mm"), 197.777, near);
    EXPECT_NEAR(
        knot_of("double-overhand", "double-braid polyester 10 mm", {{"rule", "barrel-form"}}),
        199.0305, near);
}

TEST(DoubleOverhand, ShockCordIsDrawnUpUnderStretchWithAShortTail) {
    // 5 mm: 17.198 x 1.1 x 5 = 94.589; body 17.5; tail 6 D = 30; heat 4.
    const auto end = make_end("double-overhand", "shock-cord rubber 5 mm");
    EXPECT_NEAR(length_of(end, Item::knot), 94.589, near);
    EXPECT_NEAR(length_of(end, Item::tail), 30.0, near);
    EXPECT_NEAR(in_millimetres(end.total()), 146.089, near);
    EXPECT_NE(end.steps[2].text.find("under that stretch"), std::string_view::npos);
}

TEST(Stevedore, HasTwoTightForms) {
    // 8 mm bare HMPE: 20.776 x 1.05 x 8 = 174.5184, and 22.005 x 8.4 = 184.842.
    EXPECT_NEAR(knot_of("stevedore", "12-strand HMPE 8 mm"), 174.5184, near);
    EXPECT_NEAR(knot_of("stevedore", "12-strand HMPE 8 mm", {{"rule", "other-form"}}), 184.842,
                near);
    EXPECT_NEAR(length_of(make_end("stevedore", "12-strand HMPE 8 mm"), Item::knot_body), 36.0,
                near);
}

TEST(Stoppers, TailIsLongerInSlipperyRope) {
    for (const std::string_view kind : {"overhand", "double-overhand", "stevedore"}) {
        EXPECT_NEAR(length_of(make_end(kind, "12-strand HMPE 10 mm"), Item::tail), 200.0, near);
        EXPECT_NEAR(length_of(make_end(kind, "core-dependent HMPE 10 mm"), Item::tail), 120.0,
                    near);
        EXPECT_NEAR(length_of(make_end(kind, "3-strand nylon 10 mm"), Item::tail), 80.0, near);
    }
}

TEST(StopperBall, BallLiesBeyondItsBearingFace) {
    // 4 mm covered: ball 15; 17.198 x 1.15 x 4 = 79.1108; body 14; tail 12 D = 48; heat 4.
    const auto end = make_end("stopper-ball", "core-dependent HMPE 4 mm", {{"ball", "15 mm"}});
    EXPECT_NEAR(length_of(end, Item::ball), 15.0, near);
    EXPECT_NEAR(in_millimetres(end.total()), 160.1108, near);
    EXPECT_NEAR(mark_of(end, MarkName::knot_far_side), 52.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::knot_face), 145.1108, near);
    EXPECT_NEAR(mark_of(end, MarkName::ball_face), 160.1108, near);
    EXPECT_NEAR(value_of(end, ValueName::ball_m), 15.0, near);
}

TEST(StopperBall, AnotherKnotMayBeTiedBehind) {
    const auto knot = [](std::string_view rule) {
        return knot_of("stopper-ball", "double-braid polyester 10 mm",
                       {{"ball", "20 mm"}, {"rule", rule}});
    };
    EXPECT_NEAR(knot("figure-eight-behind"), 157.734, near); // 13.716 x 11.5
    EXPECT_NEAR(knot("overhand-behind"), 116.127, near);     // 10.098 x 11.5
}

TEST(Stoppers, AreComparedWithTheirHole) {
    // The tight knots are 2.9, 3.0, 3.7 and 3.1 D across: 29 mm and so on in rope of 10 mm.
    const std::vector<std::pair<std::string_view, double>> widths{
        {"overhand", 29.0}, {"figure-eight", 30.0}, {"double-overhand", 37.0}, {"stevedore", 31.0}};
    for (const auto& [kind, width] : widths) {
        const auto end = make_end(kind, "double-braid polyester 10 mm", {{"hole", "28.9 mm"}});
        ASSERT_TRUE(end.knot && end.knot->width) << kind;
        EXPECT_NEAR(in_millimetres(to_nanometres(*end.knot->width)), width, near) << kind;
        EXPECT_NEAR(value_of(end, ValueName::knot_width_m), width, near) << kind;
        const auto fault = refuse_end(kind, "double-braid polyester 10 mm", {{"hole", "37 mm"}});
        EXPECT_EQ(fault.code, Code::field_out_of_range) << kind;
        EXPECT_EQ(fault.field, "hole") << kind;
    }
    const auto fault = refuse_end("stopper-ball", "double-braid polyester 10 mm",
                                  {{"ball", "20 mm"}, {"bore", "37 mm"}});
    EXPECT_EQ(fault.code, Code::field_out_of_range);
    EXPECT_EQ(fault.field, "bore");
}

TEST(Stoppers, SlipInBareHmpe) {
    for (const std::string_view kind :
         {"overhand", "figure-eight", "double-overhand", "stevedore"}) {
        EXPECT_TRUE(cautions_about(make_end(kind, "12-strand HMPE 5 mm"), "slips")) << kind;
        EXPECT_FALSE(cautions_about(make_end(kind, "double-braid polyester 6 mm"), "slips"))
            << kind;
    }
}

TEST(Stoppers, TailIsShortInShockCord) {
    EXPECT_NEAR(length_of(make_end("figure-eight", "shock-cord rubber 5 mm"), Item::tail), 30.0,
                near);
}

TEST(StopperBall, NeedsTheBall) {
    const auto fault = refuse_end("stopper-ball", "double-braid polyester 6 mm");
    EXPECT_EQ(fault.code, Code::field_missing);
    EXPECT_EQ(fault.field, "ball");
}

} // namespace
} // namespace libsplice::testing
