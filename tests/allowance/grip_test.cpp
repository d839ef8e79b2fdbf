// How a buried tail is thinned, what its grip comes to, and a rope's own braid constant.
#include "ends.h"
#include "made_up_ropes.h"

#include <map>

namespace libsplice::testing {
namespace {

constexpr std::string_view hmpe = "12-strand HMPE 10 mm";

double number_of(const End& end, ValueName name) {
    return find_value(end, name).value_or(not_there);
}

MarkName pair_mark(int number) {
    return static_cast<MarkName>(static_cast<int>(MarkName::drop_pair_1) + number - 1);
}

TEST(Taper, OfTwelveStrandsDropsFivePairsASixthApart) {
    // 240 mm of taper after 2 mm of cutting loss: 40 mm from mark to mark.
    const auto end = make_end("buried-eye", hmpe);
    for (int i = 1; i <= 5; ++i) {
        EXPECT_NEAR(mark_of(end, pair_mark(i)), 242.0 - 40.0 * i, near) << i;
    }
    EXPECT_TRUE(std::isnan(mark_of(end, MarkName::drop_pair_6)));
    EXPECT_NEAR(mark_of(end, MarkName::taper_start), 242.0, near);
    EXPECT_EQ(number_of(end, ValueName::strands), 12.0);
    EXPECT_EQ(number_of(end, ValueName::pairs), 5.0);
    EXPECT_NEAR(number_of(end, ValueName::end_section), 1.0 / 6.0, 1e-12);
    EXPECT_NEAR(value_of(end, ValueName::end_step_m), 0.801234, 5e-6);
    EXPECT_FALSE(cautions_about(end, "at once"));
}

TEST(Taper, ShowsWhatIsLeftAfterEachPair) {
    const auto end = make_end("locked-eye", hmpe);
    constexpr std::array sections{0.833333, 0.666667, 0.5, 0.333333, 0.166667};
    ASSERT_EQ(end.taper.size(), sections.size());
    for (std::size_t i = 0; i < sections.size(); ++i) {
        EXPECT_NEAR(end.taper[i].section, sections.at(i), 5e-7);
        EXPECT_EQ(end.taper[i].strands_left, 10 - 2 * static_cast<int>(i));
        EXPECT_NEAR(in_millimetres(end.taper[i].from_tail_end), mark_of(end, end.taper[i].mark),
                    near);
    }
    EXPECT_NEAR(in_millimetres(end.taper[0].outside), 13.540064, 2e-6); // 10 sqrt(11/6)
    EXPECT_NEAR(in_millimetres(end.taper[0].step), 0.602072, 2e-6);
}

TEST(Taper, EveryKindThatBuriesAHollowBraidSetsItOut) {
    for (const auto kind :
         {"buried-eye", "locked-eye", "larked-eye", "endless-loop", "two-eye-strop"}) {
        EXPECT_EQ(make_end(kind, hmpe).taper.size(), 5U) << kind;
    }
    EXPECT_EQ(make_end("ring-eye", hmpe, {{"groove", "30 mm"}, {"bore", "20 mm"}}).taper.size(),
              5U);
    EXPECT_EQ(make_end("sewn-join", "12-strand polyester 6 mm", {{"way", "butt"}}).taper.size(),
              5U);
    EXPECT_TRUE(make_end("adjustable-eye", hmpe).taper.empty()); // it runs through
}

TEST(Taper, OfACoreNeedsItsStrands) {
    const std::string_view covered = "core-dependent HMPE 10 mm";
    for (const auto kind : {"stripped-eye", "core-eye", "core-to-core"}) {
        EXPECT_TRUE(make_end(kind, covered).taper.empty()) << kind;
        EXPECT_EQ(make_end(kind, covered, {{"strands", "16"}}).taper.size(), 7U) << kind;
        const auto fault = refuse_end(kind, covered, {{"pairs", "5"}});
        EXPECT_EQ(fault.code, Code::field_missing) << kind;
        EXPECT_EQ(fault.field, "strands") << kind;
        EXPECT_EQ(refuse_end(kind, covered, {{"strands", "15"}}).code, Code::field_out_of_range)
            << kind;
    }
}

TEST(Taper, OfTheMostStrandsHasRoomForItsMarks) {
    const auto end = make_end("stripped-eye", "double-braid HMPE 10 mm", {{"strands", "24"}});
    EXPECT_EQ(end.taper.size(), 11U);
    Nanometres before = -1;
    for (const Mark& mark : end.marks) {
        EXPECT_GT(mark.from_tail_end, before);
        before = mark.from_tail_end;
    }
}

TEST(Taper, FewerPairsEndThickAndAreCautioned) {
    // Three of five: half is left. HMPE lost 13 to 20 % at blunt ends: up to 10 % here.
    const auto end = make_end("buried-eye", hmpe, {{"pairs", "3"}});
    EXPECT_EQ(end.taper.size(), 3U);
    EXPECT_NEAR(mark_of(end, MarkName::drop_pair_1), 2.0 + 180.0, near);
    EXPECT_NEAR(number_of(end, ValueName::end_section), 0.5, 1e-12);
    EXPECT_NEAR(number_of(end, ValueName::end_loss), 0.10, 1e-12);
    EXPECT_TRUE(cautions_about(end, "break tests"));
    // Polyester: 7.9 to 8.7 %.
    const auto polyester = make_end("buried-eye", "12-strand polyester 10 mm", {{"pairs", "3"}});
    EXPECT_NEAR(number_of(polyester, ValueName::end_loss), 0.0435, 1e-12);
}

TEST(Taper, FewerPairsTakeUpMore) {
    const auto take_up = [](std::string_view pairs) {
        return length_of(make_end("buried-eye", hmpe, {{"pairs", pairs}}), Item::take_up);
    };
    EXPECT_NEAR(take_up("5"), 47.978069, near); // as 48 D full and 24 D to nothing
    EXPECT_NEAR(take_up("0"), 58.0227, 1e-3);   // 72 (1/0.9254223147 - 1) D
    // Three: 24 D to 0.4 of the section, 24 x 2 / (0.9254223147 + sqrt(1 - 0.4 K)) - 24 = 1.3127.
    EXPECT_NEAR(take_up("3"), 10.0 * (48.0 * 0.0805877596 + 1.31273), 0.001);
}

TEST(Taper, NoPairsIsABluntEnd) {
    const auto blunt = make_end("buried-eye", hmpe, {{"pairs", "0"}});
    EXPECT_TRUE(std::isnan(mark_of(blunt, MarkName::taper_start)));
    EXPECT_EQ(value_of(blunt, ValueName::taper_m), 0.0);
    EXPECT_EQ(number_of(blunt, ValueName::end_section), 1.0);
    EXPECT_NEAR(number_of(blunt, ValueName::end_loss), 0.20, 1e-12);
    EXPECT_NEAR(value_of(blunt, ValueName::end_step_m), 4.142136, 2e-6);
    EXPECT_TRUE(cautions_about(make_end("buried-eye", hmpe, {{"taper", "0 mm"}}), "break tests"));
    EXPECT_TRUE(cautions_about(
        make_end("stripped-eye", "core-dependent HMPE 10 mm", {{"pairs", "0"}}), "break tests"));
}

TEST(Taper, WhatCannotBeDroppedIsRefused) {
    for (const FieldList& fields :
         {FieldList{{"pairs", "6"}}, FieldList{{"taper", "0 mm"}, {"pairs", "2"}},
          FieldList{{"taper", "24 D"}, {"pairs", "0"}}}) {
        const auto fault = refuse_end("buried-eye", hmpe, fields);
        EXPECT_EQ(fault.code, Code::field_out_of_range);
        EXPECT_EQ(fault.field, "pairs");
    }
}

TEST(Grip, OfThePublishedBuriesWithWhatItAssumes) {
    // Margins at 0.07 and 15 degrees, at 0.05 and 12, at 0.10 and 18.
    const auto end = make_end("buried-eye", hmpe);
    EXPECT_NEAR(number_of(end, ValueName::grip_margin), 2.74, 0.005);
    EXPECT_NEAR(number_of(end, ValueName::grip_margin_low), 1.64 * 0.05 / 0.07, 0.005);
    EXPECT_NEAR(number_of(end, ValueName::grip_margin_high), 4.33 * 0.10 / 0.07, 0.01);
    EXPECT_EQ(number_of(end, ValueName::friction), 0.07);
    EXPECT_EQ(number_of(end, ValueName::braid_angle_deg), 15.0);
    EXPECT_EQ(number_of(end, ValueName::packing), 1.0);
    EXPECT_EQ(number_of(end, ValueName::throat_share), 0.5);
    EXPECT_FALSE(cautions_about(end, "simple model"));
    // 42 D in polyester at 0.12 holds as 72 D at 0.07 do.
    const auto polyester = make_end("buried-eye", "12-strand polyester 10 mm");
    EXPECT_NEAR(number_of(polyester, ValueName::grip_margin), 2.74, 0.005);
}

TEST(Grip, IsShownForEveryBuryThatItsModelFits) {
    for (const auto kind : {"buried-eye", "locked-eye", "larked-eye", "endless-loop",
                            "two-eye-strop", "adjustable-eye"}) {
        EXPECT_GT(number_of(make_end(kind, hmpe), ValueName::grip_margin), 1.0) << kind;
    }
    for (const auto kind : {"stripped-eye", "core-eye", "core-to-core"}) {
        EXPECT_GT(number_of(make_end(kind, "core-dependent HMPE 8 mm"), ValueName::grip_margin),
                  1.0)
            << kind;
    }
    // No friction is to hand; the stitching carries; cover and core into each other.
    for (const auto& end : {make_end("buried-eye", "12-strand polypropylene 8 mm"),
                            make_end("buried-eye", "12-strand LCP 8 mm"),
                            make_end("sewn-join", "12-strand polyester 6 mm", {{"way", "butt"}}),
                            make_end("end-for-end", "double-braid polyester 10 mm")}) {
        EXPECT_TRUE(std::isnan(number_of(end, ValueName::grip_margin)));
    }
}

TEST(Grip, IsCautionedWhereItsCautiousEndIsUnderOne) {
    // At 0.05 and 12 degrees a tail of 72 D has 1.17, so one of 61.6 D has 1.
    const auto cautioned = [](std::string_view tail) {
        return cautions_about(make_end("buried-eye", hmpe, {{"tail", tail}}), "simple model");
    };
    EXPECT_TRUE(cautioned("61 D"));
    EXPECT_FALSE(cautioned("62 D"));
}

TEST(Grip, ChangesNoLengthAndStandsInForNoMinimum) {
    // 44 D has a margin of 1.7 and is refused all the same; 24 D in polyester is not.
    EXPECT_EQ(refuse_end("buried-eye", hmpe, {{"tail", "44 D"}}).code,
              Code::below_published_minimum);
    const auto shortest = make_end("buried-eye", "12-strand polyester 10 mm", {{"tail", "24 D"}});
    EXPECT_NEAR(length_of(shortest, Item::tail), 240.0, near);
    EXPECT_TRUE(cautions_about(shortest, "simple model"));
}

TEST(Grip, IsNeverCalledSafe) {
    const auto end = make_end("buried-eye", hmpe, {{"tail", "45 D"}});
    EXPECT_FALSE(cautions_about(end, "safe"));
    EXPECT_TRUE(cautions_about(end, "factor of about two"));
}

// K = 0.21 and its spread of 0.01, on 10 mm.
TEST(OwnBraidConstant, ReplacesTheTablesInEveryLedger) {
    const Book book = book_with_ropes("braid_constant = { value = 0.21, sd = 0.01, "
                                      "spread = \"measured\", source = \"bench\", "
                                      "locator = \"three test splices\", status = \"shop\" }");
    const auto kind = book.kind("buried-eye");
    const auto rope = book.catalogue().rope("own-12-strand");
    ASSERT_TRUE(kind && rope);
    const auto end = book.work_out(**kind, *rope, {});
    ASSERT_TRUE(end);
    // 48 / sqrt(0.79) + 24 x 2 / (1 + sqrt(0.79)) - 72 = 7.4169 D; with K = 0.20 it is 7.0031 D.
    const Row* row = find_row(*end, Item::take_up);
    ASSERT_NE(row, nullptr);
    EXPECT_NEAR(in_millimetres(row->length), 74.169, 0.001);
    EXPECT_NEAR(row->sd * 1000.0, 4.138, 0.001);
    EXPECT_EQ(row->origin, SpreadOrigin::measured);
    EXPECT_EQ(row->group, Group::take_up);
    EXPECT_EQ(book.citation(row->source).key, "bench");
    EXPECT_EQ(find_value(*end, ValueName::braid_constant), 0.21);
}

TEST(OwnBraidConstant, WithoutASpreadKeepsThatOfTheTables) {
    const Book book = book_with_ropes("braid_constant = { value = 0.21, source = \"bench\", "
                                      "locator = \"one test splice\", status = \"shop\" }");
    const auto end =
        book.work_out(**book.kind("buried-eye"), *book.catalogue().rope("own-12-strand"), {});
    ASSERT_TRUE(end);
    EXPECT_NEAR(length_of(*end, Item::take_up), 74.169, 0.001);
    EXPECT_NEAR(spread_of(*end, Item::take_up), 25.0, 1e-9); // 2.5 D
    EXPECT_EQ(find_row(*end, Item::take_up)->origin, SpreadOrigin::stated_guess);
}

} // namespace
} // namespace libsplice::testing
