// Hitches and bends, row by row against arithmetic by hand.
#include "ends.h"

namespace libsplice::testing {
namespace {

bool refuses_a_person(const End& end) {
    return std::ranges::any_of(end.cautions, [](const Caution& caution) {
        return caution.weight == Caution::Weight::refused_for_person;
    });
}

double retained_by(std::string_view kind, std::string_view rope, const FieldList& fields) {
    const auto end = make_end(kind, rope, fields);
    return end.retained ? end.retained->share : not_there;
}

TEST(HalyardHitch, GoesOnceThroughItsBowAndTwiceRoundItself) {
    // 6 mm on a bow of 8 mm: once round it is 14 pi = 43.982297150; two turns round the standing
    // part and the end back through them, 20 D = 120; tail 12 D = 72; heat 4. A third turn round
    // rope of 6 mm is 12 pi.
    const auto end = make_end("halyard-hitch", "double-braid polyester 6 mm", {{"pin", "8 mm"}});
    EXPECT_NEAR(length_of(end, Item::turns), 43.982297150, near);
    EXPECT_NEAR(length_of(end, Item::knot), 120.0, near);
    EXPECT_NEAR(spread_of(end, Item::knot), 17.320508076, 1e-7); // 5 D over root 3
    EXPECT_NEAR(mark_of(end, MarkName::knot_far_side), 76.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::turns_end), 196.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::load_side), 239.982297150, near);
    EXPECT_EQ(end.standing_mark, end.total());
    const auto three =
        make_end("halyard-hitch", "double-braid polyester 6 mm", {{"pin", "8 mm"}, {"turns", "3"}});
    EXPECT_NEAR(in_millimetres(three.total() - end.total()), 37.699111843, near);
    EXPECT_NEAR(length_of(three, Item::turns), 43.982297150, near);
    EXPECT_NEAR(*find_value(three, ValueName::turns), 3.0, 1e-12);
}

TEST(BuntlineHitch, IsATurnAndFourteenDiameters) {
    const auto end = make_end("buntline-hitch", "core-dependent HMPE 5 mm", {{"pin", "10 mm"}});
    EXPECT_NEAR(length_of(end, Item::turns), 47.123889804, near); // 15 pi
    EXPECT_NEAR(length_of(end, Item::knot), 70.0, near);
    EXPECT_NEAR(length_of(end, Item::tail), 75.0, near); // 15 D in covered HMPE
}

TEST(Hitches, NeedWhatTheyGoRound) {
    const auto fault = refuse_end("buntline-hitch", "3-strand nylon 10 mm");
    EXPECT_EQ(fault.code, Code::field_missing);
    EXPECT_EQ(fault.field, "pin");
    EXPECT_EQ(refuse_end("cow-hitch", "3-strand nylon 10 mm").field, "spar");
}

TEST(RoundTurn, HalfHitchesGetWhatTheTurnsLetPast) {
    // Friction 0.12, two turns: exp(-0.48 pi) = 0.2213562. Spar 30, rope 10: 80 pi.
    const auto end =
        make_end("round-turn-two-half-hitches", "3-strand polyester 10 mm", {{"spar", "30 mm"}});
    EXPECT_NEAR(length_of(end, Item::turns), 251.327412287, near);
    EXPECT_NEAR(length_of(end, Item::knot), 130.0, near);
    ASSERT_TRUE(find_value(end, ValueName::load_past_turns));
    EXPECT_NEAR(*find_value(end, ValueName::load_past_turns), std::exp(-1.507964474), 1e-9);
}

TEST(CowAndRollingHitch, TurnsAndWhatIsBesides) {
    const auto cow = make_end("cow-hitch", "3-strand polyester 10 mm", {{"spar", "30 mm"}});
    EXPECT_NEAR(in_millimetres(cow.total()), 251.327412287 + 80.0 + 120.0 + 4.0, near);
    const auto rolling = make_end("rolling-hitch", "3-strand polyester 10 mm", {{"spar", "30 mm"}});
    EXPECT_NEAR(in_millimetres(rolling.total()), 376.991118431 + 30.0 + 120.0 + 4.0, near);
}

TEST(CloveHitch, IsTwoTurnsAndALongTail) {
    // Spar 50, rope 10: two turns are 120 pi = 376.991118431; 2 D besides; tail 15 D; heat 4.
    const auto end = make_end("clove-hitch", "3-strand nylon 10 mm", {{"spar", "50 mm"}});
    EXPECT_NEAR(in_millimetres(end.total()), 376.991118431 + 20.0 + 150.0 + 4.0, near);
    const auto shorter = make_end("clove-hitch", "3-strand nylon 10 mm",
                                  {{"spar", "50 mm"}, {"rule", "short-tail"}});
    EXPECT_NEAR(length_of(shorter, Item::tail), 120.0, near);
}

TEST(CloveHitch, BareHmpeNeedsAStitchedTail) {
    const FieldList on_spar{{"spar", "25 mm"}};
    const auto fault = refuse_end("clove-hitch", "12-strand HMPE 5 mm", on_spar);
    EXPECT_EQ(fault.code, Code::field_missing);
    EXPECT_EQ(fault.field, "stitched");
    EXPECT_TRUE(fault.rule.starts_with("practical-sailor-hmpe-splice")) << fault.rule;
    refuse_end("clove-hitch", "12-strand HMPE 5 mm", {{"spar", "25 mm"}, {"stitched", "no"}});
    const auto end =
        make_end("clove-hitch", "12-strand HMPE 5 mm", {{"spar", "25 mm"}, {"stitched", "yes"}});
    // At friction 0.07 and five diameters the margin is 0.2875144984.
    EXPECT_NEAR(*find_value(end, ValueName::hitch_margin), 0.2875144984, 1e-9);
    EXPECT_TRUE(refuses_a_person(end));                   // stitched or not
    EXPECT_NEAR(length_of(end, Item::tail), 100.0, near); // 20 D in bare HMPE
    make_end("clove-hitch", "core-dependent HMPE 5 mm", on_spar);
}

TEST(CloveHitch, SaysHowManyTurnsFrictionLacks) {
    // 0.12 at five diameters: 2 x 0.6614378278 x 0.24 x exp(0.24 pi) = 0.674809; to come to 1 it
    // lacks ln(1/0.674809) / (0.24 pi) = 0.52 turns, so one more. With three turns the margin is
    // 0.674809 x exp(0.24 pi) = 1.434270.
    const auto end = make_end("clove-hitch", "3-strand polyester 10 mm", {{"spar", "50 mm"}});
    EXPECT_NEAR(*find_value(end, ValueName::hitch_margin), 0.674809, 1e-6);
    EXPECT_NEAR(*find_value(end, ValueName::extra_turns), 1.0, 1e-12);
    const auto three =
        make_end("clove-hitch", "3-strand polyester 10 mm", {{"spar", "50 mm"}, {"turns", "3"}});
    EXPECT_NEAR(*find_value(three, ValueName::hitch_margin), 1.434270, 2e-6);
    EXPECT_FALSE(cautions_about(three, "friction alone"));
    EXPECT_TRUE(cautions_about(end, "friction alone"));
}

TEST(Hitches, RetainWhatIsPrintedForLaidRopeOnly) {
    const FieldList on_spar{{"spar", "50 mm"}};
    EXPECT_NEAR(retained_by("clove-hitch", "3-strand nylon 10 mm", on_spar), 0.60, 1e-12);
    EXPECT_NEAR(retained_by("round-turn-two-half-hitches", "3-strand nylon 10 mm", on_spar), 0.60,
                1e-12);
    for (const std::string_view kind : {"clove-hitch", "round-turn-two-half-hitches"}) {
        EXPECT_TRUE(std::isnan(retained_by(kind, "double-braid polyester 10 mm", on_spar))) << kind;
    }
    EXPECT_TRUE(std::isnan(retained_by("cow-hitch", "3-strand nylon 10 mm", on_spar)));
}

TEST(Hitches, SlipInBareHmpeAndAreRefusedForAPerson) {
    for (const std::string_view kind :
         {"round-turn-two-half-hitches", "cow-hitch", "rolling-hitch"}) {
        EXPECT_TRUE(refuses_a_person(make_end(kind, "12-strand HMPE 5 mm", {{"spar", "25 mm"}})))
            << kind;
    }
    for (const std::string_view kind : {"halyard-hitch", "buntline-hitch"}) {
        EXPECT_TRUE(refuses_a_person(make_end(kind, "12-strand HMPE 5 mm", {{"pin", "10 mm"}})))
            << kind;
        EXPECT_FALSE(
            refuses_a_person(make_end(kind, "double-braid polyester 6 mm", {{"pin", "10 mm"}})))
            << kind;
    }
}

TEST(SheetBend, GoesRoundBothLegsOfTheBight) {
    // 4 mm round a bight of 8 mm: pi (8 + 4) + 2 x 8 = 53.699111843; 4 D = 16; tail 12 D = 48;
    // heat 4.
    const auto end = make_end("sheet-bend", "double-braid polyester 4 mm", {{"other", "8 mm"}});
    EXPECT_NEAR(length_of(end, Item::turns), 53.699111843, near);
    EXPECT_NEAR(in_millimetres(end.total()), 121.699111843, near);
    const auto twice =
        make_end("sheet-bend", "double-braid polyester 4 mm", {{"other", "8 mm"}, {"turns", "2"}});
    EXPECT_NEAR(in_millimetres(twice.total() - end.total()), 53.699111843, near);
    const auto alike = make_end("sheet-bend", "double-braid polyester 4 mm");
    EXPECT_NEAR(value_of(alike, ValueName::other_m), 4.0, near);
}

TEST(SheetBend, BightLiesInTheThickerRope) {
    // 8 mm with another rope of 4 mm: no turns, 4 D of the bight's second leg = 32, tail 12 D = 96,
    // heat 4.
    const auto thick = make_end("sheet-bend", "double-braid polyester 8 mm", {{"other", "4 mm"}});
    EXPECT_EQ(find_row(thick, Item::turns), nullptr);
    EXPECT_NEAR(in_millimetres(thick.total()), 132.0, near);
    const auto thin = make_end("sheet-bend", "double-braid polyester 4 mm", {{"other", "8 mm"}});
    EXPECT_NE(thick.steps.data(), thin.steps.data());
}

TEST(RollingHitch, SlidesOnWhatIsThinnerAndTakesATurnMoreInSlipperyRope) {
    EXPECT_TRUE(cautions_about(
        make_end("rolling-hitch", "3-strand nylon 10 mm", {{"spar", "9 mm"}}), "thinner"));
    EXPECT_FALSE(cautions_about(
        make_end("rolling-hitch", "3-strand nylon 10 mm", {{"spar", "10 mm"}}), "thinner"));
    const auto slippery =
        make_end("rolling-hitch", "core-dependent HMPE 10 mm", {{"spar", "30 mm"}});
    EXPECT_NEAR(length_of(slippery, Item::turns), 502.654824574, near); // 4 x 40 pi
}

TEST(SheetBend, SlippedInTheRopeThatWasTested) {
    EXPECT_NEAR(retained_by("sheet-bend", "3-strand polyester 10 mm", {}), 0.48, 1e-12);
    EXPECT_TRUE(refuses_a_person(make_end("sheet-bend", "3-strand polyester 10 mm")));
    // Braid is smoother than what was tested.
    EXPECT_TRUE(refuses_a_person(make_end("sheet-bend", "double-braid polyester 10 mm")));
    EXPECT_FALSE(refuses_a_person(make_end("sheet-bend", "3-strand manila 14 mm")));
    EXPECT_TRUE(refuses_a_person(make_end("sheet-bend", "12-strand HMPE 5 mm")));
}

TEST(DoubleFisherman, CountsOneLinesBarrel) {
    // 22 D, a tail of 12 D, heat 4.
    const auto end = make_end("double-fisherman", "3-strand polyester 10 mm");
    EXPECT_NEAR(in_millimetres(end.total()), 344.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::knot_face), 344.0, near);
    EXPECT_EQ(find_row(end, Item::knot_body), nullptr);
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.655, 1e-12); // 1730 of 2640 kg
    EXPECT_FALSE(make_end("double-fisherman", "3-strand nylon 10 mm").retained);
    // Three turns in slippery rope: 30 D of a barrel.
    const auto slippery = make_end("double-fisherman", "core-dependent HMPE 10 mm");
    EXPECT_NEAR(length_of(slippery, Item::knot), 300.0, near);
    EXPECT_NEAR(*find_value(slippery, ValueName::turns), 3.0, 1e-12);
    EXPECT_NEAR(*find_value(end, ValueName::turns), 2.0, 1e-12);
}

} // namespace
} // namespace libsplice::testing
