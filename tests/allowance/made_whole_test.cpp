// Items made whole: the rows of both sides, and the marks of one.
#include "ends.h"

namespace libsplice::testing {
namespace {

constexpr std::string_view rope = "12-strand HMPE 4 mm";

TEST(EndlessLoop, TwoTailsAndWhatTheyTakeUp) {
    const auto end = make_end("endless-loop", rope);
    EXPECT_NEAR(length_of(end, Item::tail), 576.0, near);         // 2 x 72 x 4
    EXPECT_NEAR(length_of(end, Item::take_up), 75.6951625, near); // 2 x 9.4618953125 x 4
    EXPECT_NEAR(spread_of(end, Item::take_up), 17.764108816,
                near); // 2 x 2.220513602 x 4, erring together
    EXPECT_NEAR(length_of(end, Item::settling), -38.647019856, near); // 2 x 4.830877482 x 4
    EXPECT_NEAR(length_of(end, Item::cutting_loss), 4.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::crossing), 290.0, near); // 2 + 288
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 288.0, near);
}

TEST(TwoEyeStrop, IsTwoLockedEyes) {
    const FieldList eye{{"eye", "40 mm"}, {"pin", "8 mm"}};
    const auto one = make_end("locked-eye", rope, eye);
    const auto both = make_end("two-eye-strop", rope, eye);
    EXPECT_EQ(both.total(), 2 * one.total());
    EXPECT_NEAR(length_of(both, Item::crossing), -8.0, near); // 1 D at each
    EXPECT_EQ(both.standing_mark, one.standing_mark);
    EXPECT_NE(both.steps.data(), one.steps.data());
}

TEST(SoftShackle, FourPartsLieOverItsLength) {
    const auto end = make_end("soft-shackle", rope, {{"pin", "10 mm"}});
    EXPECT_EQ(end.laid, 4);
    // Each of two legs: pi (10 + 4) - 2 x 10.
    EXPECT_NEAR(length_of(end, Item::round_bearings), 47.96459430, near);
    EXPECT_NEAR(length_of(end, Item::knot), 160.0, near);      // 20 D an end
    EXPECT_NEAR(spread_of(end, Item::knot), 27.7128129, 1e-6); // 2 x 6 D over the root of 3
    EXPECT_NEAR(length_of(end, Item::noose), 56.0, near);
    EXPECT_NEAR(length_of(end, Item::end_left), 160.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::knot_face), 162.0, near); // 2 + 80 + 80
    EXPECT_TRUE(cautions_about(end, "estimate"));
    EXPECT_FALSE(end.retained);
}

} // namespace
} // namespace libsplice::testing
