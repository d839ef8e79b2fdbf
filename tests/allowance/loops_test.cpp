// Loop knots, row by row against arithmetic by hand.
#include "ends.h"

namespace libsplice::testing {
namespace {

bool refuses_a_person(const End& end) {
    return std::ranges::any_of(end.cautions, [](const Caution& caution) {
        return caution.weight == Caution::Weight::refused_for_person;
    });
}

TEST(FigureEightLoop, HalfOfItsKnotLiesOnTheStandingSide) {
    // 10 mm, a soft loop of 100 mm: pi D/2 x 2 halves and two legs, 5 pi + 200 = 215.707963268;
    // 44.95 D in the knot, half of it on either side; tail 12 D; heat 4.
    const auto end =
        make_end("figure-eight-loop", "double-braid polyester 10 mm", {{"loop", "100 mm"}});
    EXPECT_NEAR(length_of(end, Item::loop_legs), 215.707963268, near);
    EXPECT_NEAR(length_of(end, Item::knot_to_bearing), -100.0, near);
    EXPECT_NEAR(length_of(end, Item::knot), 449.5, near);
    EXPECT_NEAR(spread_of(end, Item::knot), 34.641016151, 1e-7);  // 6 D over root 3
    EXPECT_NEAR(mark_of(end, MarkName::loop_near), 348.75, near); // 4 + 120 + 224.75
    EXPECT_NEAR(mark_of(end, MarkName::loop_far), 564.457963268, near);
    EXPECT_NEAR(mark_of(end, MarkName::knot_standing), 789.207963268, near);
    EXPECT_NEAR(in_millimetres(end.total()), 689.207963268, near);
    EXPECT_FALSE(end.retained);
}

TEST(OverhandLoop, HasAShortTailInShockCord) {
    const auto cord = make_end("overhand-loop", "shock-cord rubber 5 mm");
    EXPECT_NEAR(length_of(cord, Item::knot), 170.0, near); // 34 D
    EXPECT_NEAR(length_of(cord, Item::tail), 30.0, near);
    EXPECT_NEAR(length_of(make_end("overhand-loop", "3-strand nylon 10 mm"), Item::tail), 120.0,
                near);
}

TEST(BarrelNoose, LiesOnItsPinAndSaysSoWithoutOne) {
    // A pin of 20 mm: the loop is 40 mm.
    const auto pinned = make_end("barrel-noose", "double-braid polyester 6 mm", {{"pin", "20 mm"}});
    EXPECT_NEAR(value_of(pinned, ValueName::eye_m), 40.0, near);
    EXPECT_NEAR(length_of(pinned, Item::knot), 132.0, near);        // 22 D
    EXPECT_NEAR(spread_of(pinned, Item::knot), 17.320508076, 1e-7); // 5 D over root 3
    EXPECT_FALSE(cautions_about(pinned, "closes on"));
    EXPECT_TRUE(
        cautions_about(make_end("barrel-noose", "double-braid polyester 6 mm"), "closes on"));
    EXPECT_NEAR(length_of(make_end("barrel-noose", "shock-cord rubber 5 mm"), Item::tail), 30.0,
                near);
}

TEST(DoubleBowline, UsesATurnMoreThanABowline) {
    const auto single = make_end("bowline", "double-braid polyester 8 mm", {{"loop", "60 mm"}});
    const auto twice =
        make_end("double-bowline", "double-braid polyester 8 mm", {{"loop", "60 mm"}});
    EXPECT_NEAR(in_millimetres(twice.total() - single.total()), 64.0, near); // 23 - 15 D
    // Both leave 8 D on the tail's side; two turns take 15 D, one takes 7.
    EXPECT_NEAR(mark_of(twice, MarkName::loop_far), mark_of(single, MarkName::loop_far), near);
    EXPECT_NEAR(mark_of(twice, MarkName::knot_standing) - mark_of(twice, MarkName::loop_far), 120.0,
                near);
    EXPECT_TRUE(single.retained);
    EXPECT_FALSE(twice.retained); // no source tested one
}

TEST(Loops, SlipInBareHmpeAndAreRefusedForAPerson) {
    for (const std::string_view kind :
         {"figure-eight-loop", "overhand-loop", "barrel-noose", "double-bowline"}) {
        EXPECT_TRUE(refuses_a_person(make_end(kind, "12-strand HMPE 5 mm"))) << kind;
        const auto covered = make_end(kind, "core-dependent HMPE 5 mm");
        EXPECT_TRUE(refuses_a_person(covered)) << kind; // the core slips in the cover
        EXPECT_TRUE(cautions_about(covered, "core slips")) << kind;
        EXPECT_FALSE(refuses_a_person(make_end(kind, "double-braid polyester 6 mm"))) << kind;
    }
}

TEST(Loops, TooSmallNamesTheLoop) {
    const auto fault = refuse_end("figure-eight-loop", "double-braid polyester 8 mm",
                                  {{"loop", "20 mm"}, {"pin", "20 mm"}});
    EXPECT_EQ(fault.code, Code::eye_too_small);
    EXPECT_EQ(fault.field, "loop");
}

} // namespace
} // namespace libsplice::testing
