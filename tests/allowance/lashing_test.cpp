// Lashings round one fitting and through two.
#include "ends.h"

namespace libsplice::testing {
namespace {

TEST(Lashing, RoundOneFittingIsTurnsAndHalfHitches) {
    // 3 mm round an eyelet's edge of 9 mm: a turn is 12 pi; four, 48 pi = 150.796447372; three half
    // hitches of 12 D are 108; heat 4.
    const auto end = make_end("lashing", "solid-braid polyester 3 mm", {{"spar", "9 mm"}});
    EXPECT_NEAR(length_of(end, Item::turns), 150.796447372, near);
    EXPECT_NEAR(length_of(end, Item::half_hitches), 108.0, near);
    EXPECT_NEAR(spread_of(end, Item::half_hitches), 15.588457268, 1e-7); // 9 D over root 3
    EXPECT_NEAR(mark_of(end, MarkName::turns_end), 112.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::load_side), 262.796447372, near);
}

TEST(Lashing, ThroughTwoAlikeIsABandRoundBoth) {
    // Fittings of 9 mm, 30 mm clear: 39 mm from centre to centre; pi (9 + 3) + 78 =
    // 115.699111843; six turns.
    const auto end = make_end("lashing", "solid-braid polyester 3 mm",
                              {{"spar", "9 mm"}, {"gap", "30 mm"}, {"turns", "6"}});
    EXPECT_NEAR(length_of(end, Item::turns), 694.194671058, near);
    EXPECT_NEAR(value_of(end, ValueName::gap_m), 30.0, near);
}

TEST(Lashing, ThroughTwoUnlike) {
    // 15 and 5 mm, 10 mm clear, rope 3 mm: radii 9 and 4, centres 20 apart. 2 sqrt(400 - 25) +
    // 13 pi + 10 asin(0.25) = 38.729833462 + 40.840704497 + 2.526802551 = 82.097340510.
    const auto end =
        make_end("lashing", "solid-braid polyester 3 mm",
                 {{"spar", "15 mm"}, {"pin", "5 mm"}, {"gap", "10 mm"}, {"turns", "1"}});
    EXPECT_NEAR(length_of(end, Item::turns), 82.097340510, near);
}

TEST(Lashing, TakesItsHalfHitchesFromTheJob) {
    const auto end =
        make_end("lashing", "solid-braid polyester 3 mm", {{"spar", "9 mm"}, {"hitches", "2"}});
    EXPECT_NEAR(length_of(end, Item::half_hitches), 72.0, near);
}

TEST(Lashing, SecondFittingNeedsTheGap) {
    const auto fault =
        refuse_end("lashing", "solid-braid polyester 3 mm", {{"spar", "9 mm"}, {"pin", "5 mm"}});
    EXPECT_EQ(fault.code, Code::field_missing);
    EXPECT_EQ(fault.field, "gap");
}

TEST(Lashing, InBareHmpeSaysWhatGetsPastTheTurns) {
    const auto end = make_end("lashing", "12-strand HMPE 3 mm", {{"spar", "9 mm"}});
    EXPECT_TRUE(cautions_about(end, "stitch the tail"));
    EXPECT_NEAR(*find_value(end, ValueName::load_past_turns), std::exp(-1.759291886),
                1e-9); // 0.56 pi
    EXPECT_FALSE(cautions_about(make_end("lashing", "3-strand nylon 6 mm", {{"spar", "9 mm"}}),
                                "stitch the tail"));
}

} // namespace
} // namespace libsplice::testing
