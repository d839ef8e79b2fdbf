// Joins that close a line on itself: rows for both sides, marks for either.
#include "ends.h"

namespace libsplice::testing {
namespace {

double number_of(const End& allowance, ValueName name) {
    return find_value(allowance, name).value_or(not_there);
}

TEST(ShortSplice, CountsBothSidesAndMarksOne) {
    // 12 mm: 5 tucks of 5.3 D are 318 a side, ends left of 6 D 72, a cut of 2.
    const auto join = make_end("short-splice", "3-strand polyester 12 mm");
    EXPECT_NEAR(length_of(join, Item::tucks), 636.0, near);
    EXPECT_NEAR(length_of(join, Item::end_left), 144.0, near);
    EXPECT_NEAR(length_of(join, Item::cutting_loss), 4.0, near);
    EXPECT_NEAR(in_millimetres(join.total()), 784.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::unlay), 392.0, near);
    EXPECT_NEAR(value_of(join, ValueName::unlay_m), 318.0, near);
    ASSERT_TRUE(join.retained);
    EXPECT_NEAR(join.retained->share, 0.85, 1e-12);
}

TEST(ShortSplice, KeepsTheRegulationsFloor) {
    const auto few = refuse_end("short-splice", "3-strand nylon 12 mm", {{"tucks", "3"}});
    EXPECT_EQ(few.code, Code::below_published_minimum);
    EXPECT_TRUE(few.rule.starts_with("osha-1926-251")) << few.rule;
    make_end("short-splice", "3-strand nylon 12 mm", {{"rule", "four-tucks"}});
    EXPECT_NEAR(length_of(make_end("short-splice", "3-strand manila 14 mm"), Item::tucks), 445.2,
                near); // 2 x 3 x 5.3 x 14
    EXPECT_EQ(refuse_end("short-splice", "3-strand nylon 12 mm", {{"end_left", "71 mm"}}).field,
              "end_left");
    // From 1 in up the end left is 6 in on each side.
    EXPECT_NEAR(length_of(make_end("short-splice", "3-strand nylon 1 1/2 in"), Item::end_left),
                304.8, near);
}

TEST(LongSplice, CountsInCrowns) {
    // 10 mm: a crown of 13, 36 of them a side; one strand 25 x 13 = 325 beyond the mark.
    const auto join = make_end("long-splice", "3-strand polyester 10 mm");
    EXPECT_NEAR(length_of(join, Item::unlaid), 936.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::unlay), 470.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::strand_unlay), 795.0, near);
    // A crown is known to 0.4 D either way: 4 / sqrt(3) a crown, 72 crowns.
    EXPECT_NEAR(spread_of(join, Item::unlaid), 166.2768775, 1e-6);
    const auto measured = make_end("long-splice", "3-strand polyester 10 mm", {{"crown", "12 mm"}});
    EXPECT_NEAR(length_of(measured, Item::unlaid), 864.0, near);
    EXPECT_EQ(spread_of(measured, Item::unlaid), 0.0);
}

TEST(LongSplice, FewerCrownsThanPrintedAreRefused) {
    const auto fault = refuse_end("long-splice", "3-strand polyester 10 mm", {{"crowns", "35"}});
    EXPECT_EQ(fault.code, Code::below_published_minimum);
    EXPECT_EQ(fault.field, "crowns");
    make_end("long-splice", "3-strand polyester 10 mm", {{"crowns", "40"}});
}

TEST(EndForEnd, PlaitIsTuckedWithPairsSinglesAndHalves) {
    // 14 mm: 12 tucks of two picks of 1 D are 336 a side; ends left of 6 D are 84.
    const auto join = make_end("end-for-end", "8-plait nylon 14 mm");
    EXPECT_NEAR(length_of(join, Item::tucks), 672.0, near);
    EXPECT_NEAR(spread_of(join, Item::tucks), 134.4, 1e-9); // 0.2 D a pick, 48 picks
    EXPECT_NEAR(mark_of(join, MarkName::unlay), 422.0, near);
    EXPECT_NEAR(number_of(join, ValueName::tucks), 6.0, 1e-12);
    EXPECT_NEAR(number_of(join, ValueName::tucks_single), 3.0, 1e-12);
    EXPECT_NEAR(number_of(join, ValueName::tucks_half), 3.0, 1e-12);
}

TEST(EndForEnd, DoubleBraidMeetsAtTheExtractionMarks) {
    // 10 mm: a fid of 210 and a short section of 70 a side; the core's marks 70 and 350 beyond.
    const auto join = make_end("end-for-end", "double-braid polyester 10 mm");
    EXPECT_NEAR(length_of(join, Item::tail), 420.0, near);
    EXPECT_NEAR(length_of(join, Item::short_section), 140.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::reference), 212.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::extraction), 282.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::core_entry), 352.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::core_exit), 632.0, near);
    // Each crossing costs the 15 D that it costs in an eye: 36 D to allow less a tail of 21 D.
    EXPECT_NEAR(length_of(join, Item::take_up), 2.0 * (360.0 - 210.0), 1e-9);
    EXPECT_NEAR(spread_of(join, Item::take_up), 80.0, 1e-9); // 4 D, both sides alike
}

TEST(EndForEnd, FieldsOfTheOtherRopeAreRefused) {
    const auto braid = refuse_end("end-for-end", "double-braid polyester 10 mm", {{"tucks", "6"}});
    EXPECT_EQ(braid.code, Code::unknown_field);
    EXPECT_EQ(braid.field, "tucks");
    EXPECT_EQ(refuse_end("end-for-end", "8-plait nylon 14 mm", {{"tail", "300 mm"}}).field, "tail");
    EXPECT_EQ(refuse_end("end-for-end", "8-plait nylon 14 mm", {{"tucks", "3"}}).code,
              Code::below_published_minimum);
}

TEST(CoreToCore, CountsFidsOfTheWholeRope) {
    // 10 mm over a core of 7: 52.5 D of the rope are 525 a side.
    const FieldList core{{"core", "7 mm"}};
    const auto join = make_end("core-to-core", "core-dependent HMPE 10 mm", core);
    EXPECT_NEAR(length_of(join, Item::tail), 1050.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::join), 527.0, near);
    // Each side 525, the last 7 D of it, 70, thinned evenly: twice
    // 455/root(1 - K) + 140/(1 + root(1 - K)) - 525, with K = 0.25, 0.20 and 0.135.
    EXPECT_NEAR(length_of(join, Item::take_up), 150.8290376865, near);
    EXPECT_NEAR(spread_of(join, Item::take_up), 150.8290376865 - 115.2128623625, near);
    EXPECT_NEAR(length_of(join, Item::settling), 73.5117406876 - 150.8290376865, near);
    EXPECT_FALSE(cautions_about(join, "assumed"));
    const auto shorter = make_end("core-to-core", "core-dependent HMPE 10 mm",
                                  {{"core", "7 mm"}, {"rule", "two-fids"}});
    EXPECT_NEAR(length_of(shorter, Item::tail), 840.0, near);
}

TEST(CoreToCore, HoldsTheCoreToThePublishedLeast) {
    // 45 diameters of a core of 7 are 315.
    const auto fault = refuse_end("core-to-core", "core-dependent HMPE 10 mm",
                                  {{"core", "7 mm"}, {"tail", "314 mm"}});
    EXPECT_EQ(fault.code, Code::below_published_minimum);
    EXPECT_TRUE(cautions_about(make_end("core-to-core", "core-dependent HMPE 10 mm"), "assumed"));
}

TEST(SewnJoin, OverlapIsSharedByBothSides) {
    // 6 mm: 15 D are 90, half of it before each join mark; two heat cuts of 4.
    const auto join = make_end("sewn-join", "double-braid polyester 6 mm");
    EXPECT_NEAR(in_millimetres(join.total()), 98.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::join), 49.0, near);
    EXPECT_NEAR(mark_of(join, MarkName::overlap_end), 94.0, near);
    const auto shorter =
        make_end("sewn-join", "double-braid polyester 6 mm", {{"rule", "short-overlap"}});
    EXPECT_NEAR(length_of(shorter, Item::overlap), 72.0, near);
}

TEST(SewnJoin, ButtLeadsATailInEachWay) {
    const auto join = make_end("sewn-join", "double-braid polyester 6 mm", {{"way", "butt"}});
    EXPECT_NEAR(length_of(join, Item::tail), 300.0, near); // 2 x 25 D
    EXPECT_NEAR(mark_of(join, MarkName::join), 152.0, near);
    // Bare HMPE is not buried below 45 D, stitched or not.
    const auto hmpe = make_end("sewn-join", "12-strand HMPE 4 mm", {{"way", "butt"}});
    EXPECT_NEAR(length_of(hmpe, Item::tail), 360.0, near);
    EXPECT_EQ(
        refuse_end("sewn-join", "12-strand HMPE 4 mm", {{"way", "butt"}, {"tail", "179 mm"}}).code,
        Code::below_published_minimum);
    EXPECT_EQ(refuse_end("sewn-join", "solid-braid polyester 4 mm", {{"way", "butt"}}).code,
              Code::figure_missing);
}

TEST(SewnJoin, OfCoveredRopeTheCoverLiesOverTwoCores) {
    // A core of 4.2 mm: sqrt(36 + 17.64) = 7.323933.
    const auto join =
        make_end("sewn-join", "double-braid polyester 6 mm", {{"way", "butt"}, {"core", "4.2 mm"}});
    EXPECT_NEAR(value_of(join, ValueName::over_bury_m), 7.323933, 1e-5);
    EXPECT_EQ(
        refuse_end("sewn-join", "12-strand polyester 6 mm", {{"way", "butt"}, {"core", "4 mm"}})
            .code,
        Code::unknown_field);
    EXPECT_EQ(refuse_end("sewn-join", "double-braid polyester 6 mm", {{"core", "4 mm"}}).code,
              Code::unknown_field);
}

TEST(SewnJoin, IsNoJoinForAPerson) {
    const auto join = make_end("sewn-join", "solid-braid polyester 4 mm");
    EXPECT_TRUE(std::ranges::any_of(join.cautions, [](const Caution& caution) {
        return caution.weight == Caution::Weight::refused_for_person;
    }));
    EXPECT_EQ(refuse_end("sewn-join", "solid-braid polyester 4 mm", {{"tail", "50 mm"}}).code,
              Code::unknown_field);
}

TEST(CoverOverJoin, TheThinPieceHasTheNose) {
    // 4 mm: 60 D are 240, the nose a third; the first stitch 1.25 D inside the cover's end.
    const auto thin = make_end("cover-over-join", "12-strand HMPE 4 mm", {{"side", "thin"}});
    EXPECT_NEAR(in_millimetres(thin.total()), 242.0, near);
    EXPECT_NEAR(mark_of(thin, MarkName::nose_end), 2.0, near);
    EXPECT_NEAR(mark_of(thin, MarkName::taper_start), 82.0, near);
    EXPECT_NEAR(mark_of(thin, MarkName::first_stitch), 237.0, near);
    EXPECT_NEAR(mark_of(thin, MarkName::cover_end), 242.0, near);
    EXPECT_TRUE(cautions_about(thin, "both ways"));
    EXPECT_EQ(
        refuse_end("cover-over-join", "12-strand HMPE 4 mm", {{"side", "thin"}, {"tail", "179 mm"}})
            .code,
        Code::below_published_minimum);
}

TEST(CoverOverJoin, TheThickPieceGivesUpOnlyItsCut) {
    const auto thick = make_end("cover-over-join", "double-braid polyester 8 mm",
                                {{"side", "thick"}, {"thin", "4 mm"}});
    EXPECT_NEAR(in_millimetres(thick.total()), 4.0, near);
    EXPECT_NEAR(mark_of(thick, MarkName::cover_end), 4.0, near);
    EXPECT_NEAR(mark_of(thick, MarkName::nose_end), 244.0, near);
    EXPECT_NEAR(spread_of(thick, Item::take_up), 20.0, 1e-9); // 2.5 D
    // A hollow braid of 8 over 4 swells to 8 sqrt(1.25) = 8.94427191.
    const auto hollow = make_end("cover-over-join", "12-strand polyester 8 mm",
                                 {{"side", "thick"}, {"thin", "4 mm"}});
    EXPECT_NEAR(value_of(hollow, ValueName::over_bury_m), 8.94427191, 1e-7);
    // Once it was loaded K = 0.10: root(1 - 0.10/4) = 0.9874209; 160 of it in full and 80 thinned
    // evenly: 160/0.9874209 + 160/1.9874209 - 240. With K = 0.06 it is 1.5159423.
    EXPECT_NEAR(length_of(hollow, Item::take_up), 2.5446481313, near);
    EXPECT_NEAR(spread_of(hollow, Item::take_up), 1.0287058184, near);
}

TEST(CoverOverJoin, NeedsToKnowBothLines) {
    // The first stitch lies 1.25 D of a 10 mm line from the cover's end.
    const auto nose = [](std::string_view tail) {
        return try_end("cover-over-join", "core-dependent HMPE 6 mm",
                       {{"side", "thin"}, {"thin", "10 mm"}, {"tail", tail}});
    };
    ASSERT_FALSE(nose("12 mm").has_value());
    EXPECT_EQ(nose("12 mm").error().code, Code::field_out_of_range);
    EXPECT_TRUE(nose("13 mm").has_value());
    EXPECT_EQ(refuse_end("cover-over-join", "12-strand HMPE 4 mm").field, "side");
    EXPECT_EQ(
        refuse_end("cover-over-join", "double-braid polyester 8 mm", {{"side", "thick"}}).field,
        "thin");
    EXPECT_EQ(refuse_end("cover-over-join", "double-braid polyester 8 mm",
                         {{"side", "thick"}, {"thin", "8 mm"}})
                  .code,
              Code::field_out_of_range);
}

TEST(CoverOverJoin, ASmallSheaveIsPointedOut) {
    const auto on = [](std::string_view sheave) {
        return make_end("cover-over-join", "12-strand HMPE 4 mm",
                        {{"side", "thin"}, {"sheave", sheave}});
    };
    EXPECT_TRUE(cautions_about(on("31 mm"), "sheave is smaller")); // 8 D are 32
    EXPECT_FALSE(cautions_about(on("32 mm"), "sheave is smaller"));
}

} // namespace
} // namespace libsplice::testing
