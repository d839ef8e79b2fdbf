// Eyes in hollow braid, row by row and mark by mark, against arithmetic by hand.
#include "ends.h"

namespace libsplice::testing {
namespace {

// An eye of 36 mm on a pin of 12 mm in HMPE of 5 mm: the throat lies 30 mm from the pin's centre,
// and the rope round it, with touching legs, is 87.91446435 mm with 23.27429036 degrees between
// them. Tail 72 x 5 = 360, a third of it thinned in steps; take-up as spliced (K =
// 0.25) 9.4618953125 x 5 = 47.3094765625, once it was loaded (K = 0.135) 4.6310178305 x 5
// = 23.1550891525; the difference draws out, 24.15438741; 2 mm are lost to the shears.
const FieldList usual{{"eye", "36 mm"}, {"pin", "12 mm"}};
constexpr std::string_view rope = "12-strand HMPE 5 mm";

TEST(BuriedEye, RowsAreTheArithmetic) {
    const auto end = make_end("buried-eye", rope, usual);
    EXPECT_NEAR(length_of(end, Item::eye_legs), 87.91446435, near);
    EXPECT_NEAR(length_of(end, Item::throat_to_bearing), -36.0, near);
    EXPECT_NEAR(length_of(end, Item::tail), 360.0, near);
    EXPECT_NEAR(length_of(end, Item::take_up), 47.3094765625, near);
    EXPECT_NEAR(length_of(end, Item::settling), -24.15438741, near);
    EXPECT_NEAR(length_of(end, Item::cutting_loss), 2.0, near);
    EXPECT_EQ(end.rows.size(), 6U);
    // 87.91446435 - 36 + 360 + 47.3094765625 - 24.15438741 + 2
    EXPECT_NEAR(in_millimetres(end.total()), 437.0695535025, near);
}

TEST(BuriedEye, SpreadsAreThoseOfTheirRanges) {
    const auto end = make_end("buried-eye", rope, usual);
    // What K less by 0.05 does, 2.220513602 D; the net is what K once loaded less by 0.04 does,
    // 1.472960773 D.
    EXPECT_NEAR(spread_of(end, Item::take_up), 11.10256801, near);
    EXPECT_NEAR(spread_of(end, Item::settling), 7.364803865 - 11.10256801, near);
    EXPECT_EQ(spread_of(end, Item::eye_legs), 0.0);
    EXPECT_EQ(find_row(end, Item::take_up)->group, Group::take_up);
    EXPECT_EQ(find_row(end, Item::settling)->group, Group::take_up);
    EXPECT_EQ(find_row(end, Item::cutting_loss)->group, Group::cut);
}

TEST(BuriedEye, MarksRunFromTheTailEnd) {
    const auto end = make_end("buried-eye", rope, usual);
    EXPECT_NEAR(mark_of(end, MarkName::taper_start), 122.0, near); // 2 + 120
    EXPECT_NEAR(mark_of(end, MarkName::near_throat), 362.0, near); // 2 + 360
    EXPECT_NEAR(mark_of(end, MarkName::crown), 405.957232175, near);
    EXPECT_NEAR(mark_of(end, MarkName::far_throat), 449.91446435, near);
    EXPECT_NEAR(mark_of(end, MarkName::bury_end), 857.2239409125, near); // + 360 + 47.3094765625
    EXPECT_NEAR(mark_of(end, MarkName::exit), 989.91446435, near);       // + 108 D
    EXPECT_NEAR(in_millimetres(end.standing_mark), 449.91446435, near);
    EXPECT_NEAR(in_millimetres(end.bury_reach), 407.3094765625, near);
    EXPECT_NEAR(in_millimetres(end.fid_reach), 540.0, near);
}

TEST(BuriedEye, ValuesAreWhatTheRiggerMeasures) {
    const auto end = make_end("buried-eye", rope, usual);
    EXPECT_NEAR(value_of(end, ValueName::eye_m), 36.0, near);
    EXPECT_NEAR(value_of(end, ValueName::bury_m), 360.0, near);
    EXPECT_NEAR(value_of(end, ValueName::taper_m), 120.0, near);
    EXPECT_NEAR(value_of(end, ValueName::exit_m), 540.0, near);
    EXPECT_NEAR(value_of(end, ValueName::minimum_bury_m), 225.0, near); // 45 D
    EXPECT_NEAR(value_of(end, ValueName::over_bury_m), 7.071067812, near);
    EXPECT_NEAR(value_of(end, ValueName::fid_m), 110.0, near);         // 22 D in metric rope
    EXPECT_NEAR(value_of(end, ValueName::stitch_start_m), 6.25, near); // 1 to 1.5 D
    EXPECT_NEAR(value_of(end, ValueName::stitch_end_m), 41.25, near);  // and 6 to 8 D on
    EXPECT_NEAR(find_value(end, ValueName::throat_angle_deg).value_or(0.0), 23.27429036, 1e-7);
    EXPECT_NEAR(find_value(end, ValueName::bend_ratio).value_or(0.0), 2.4, 1e-12);
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.90, 1e-12); // lower end of the printed 90 to 100 %
    EXPECT_TRUE(end.made);
}

TEST(BuriedEye, FidOfRopeSizedInInchesIs21Diameters) {
    const auto end = make_end("buried-eye", "12-strand HMPE 1/4 in");
    EXPECT_NEAR(value_of(end, ValueName::fid_m), 133.35, near); // 21 x 6.35
}

TEST(LockedEye, CrossingClosesUpByOneDiameter) {
    const auto end = make_end("locked-eye", rope, usual);
    EXPECT_NEAR(length_of(end, Item::crossing), -5.0, near);
    EXPECT_NEAR(spread_of(end, Item::crossing), 2.886751346, 1e-8); // 0 to 2 D
    EXPECT_NEAR(in_millimetres(end.total()), 432.0695535025, near); // a buried eye's, less 5
    EXPECT_NEAR(mark_of(end, MarkName::far_throat), 449.91446435, near);
}

TEST(LockedEye, StepsSwitchWhereTheFarEndIsFixed) {
    const auto free = make_end("locked-eye", rope, {{"far_end", "free"}});
    const auto fixed = make_end("locked-eye", rope, {{"far_end", "fixed"}});
    const auto unsaid = make_end("locked-eye", rope);
    EXPECT_NE(free.steps.data(), fixed.steps.data());
    EXPECT_EQ(free.steps.data(), unsaid.steps.data());
    EXPECT_EQ(free.total(), fixed.total());
}

TEST(SoftEye, HasParallelLegsAndASpreadForThePin) {
    // No eye given, no pin: 8 D = 40 mm. Half a circle of the rope and two legs: 2.5 pi + 80.
    const auto end = make_end("buried-eye", rope);
    EXPECT_NEAR(value_of(end, ValueName::eye_m), 40.0, near);
    EXPECT_NEAR(length_of(end, Item::eye_legs), 87.853981634, near);
    EXPECT_EQ(length_of(end, Item::soft_eye), 0.0);
    EXPECT_FALSE(cautions_about(end, "short for a pin"));
}

TEST(SoftEye, ComesUpShorterOnAPin) {
    // 36 mm in 5 mm rope comes up about 4 mm shorter on a pin of 12 mm, which is a third of it.
    // Pins between none and that one: over the root of 3, about 2.3 mm.
    const auto end = make_end("buried-eye", rope, {{"eye", "36 mm"}});
    EXPECT_NEAR(spread_of(end, Item::soft_eye), 4.0 / 1.7320508, 0.25);
    EXPECT_EQ(find_row(end, Item::soft_eye)->origin, SpreadOrigin::stated_guess);
    EXPECT_EQ(find_row(make_end("buried-eye", rope, usual), Item::soft_eye), nullptr);
}

TEST(Eye, DefaultIsThreePinsOrEightDiameters) {
    const auto eye = [](std::string_view pin) {
        return value_of(make_end("buried-eye", rope, {{"pin", pin}}), ValueName::eye_m);
    };
    EXPECT_NEAR(eye("20 mm"), 60.0, near);
    EXPECT_NEAR(eye("10 mm"), 40.0, near);
    // A locked crossing takes five pins.
    const auto locked = make_end("locked-eye", rope, {{"pin", "12 mm"}});
    EXPECT_NEAR(value_of(locked, ValueName::eye_m), 60.0, near);
    const auto soft = make_end("locked-eye", rope);
    EXPECT_NEAR(value_of(soft, ValueName::eye_m), 40.0, near);
}

TEST(Eye, ShortForItsPinIsCautioned) {
    const FieldList short_eye{{"eye", "35.9 mm"}, {"pin", "12 mm"}};
    EXPECT_TRUE(cautions_about(make_end("buried-eye", rope, short_eye), "short for a pin"));
    EXPECT_FALSE(cautions_about(make_end("buried-eye", rope, usual), "short for a pin"));
    // A locked crossing wants five pins: 60 mm.
    const FieldList five{{"eye", "60 mm"}, {"pin", "12 mm"}};
    const FieldList less{{"eye", "59 mm"}, {"pin", "12 mm"}};
    EXPECT_FALSE(cautions_about(make_end("locked-eye", rope, five), "short for a pin"));
    EXPECT_TRUE(cautions_about(make_end("locked-eye", rope, less), "short for a pin"));
}

} // namespace
} // namespace libsplice::testing
