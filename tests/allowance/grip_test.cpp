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
    // K = 0.25. Five: 52 D in full and 4 D each with 10, 8, 6, 4 and 2 of 12 strands.
    EXPECT_NEAR(take_up("5"), 94.618953125, near);
    EXPECT_NEAR(take_up("0"), 111.384387633, near); // 72 (1/root 0.75 - 1) D
    // Three: 54 D in full and 6 D each with 10, 8 and 6 strands:
    // 54 x 1.1547005 + 6 (1.1239030 + 1.0954451 + 1.0690450) - 72 = 10.0841874 D.
    EXPECT_NEAR(take_up("3"), 100.841874118, near);
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
    // mu/ln 2 times the sum of the grip over 52 D in full and five steps of 4 D, as in
    // docs/grip.md: at 0.07 and 15 degrees, at 0.05 and 12, at 0.10 and 18. An even taper, 48 D in
    // full and 24 to nothing, has 2.74, 1.17 and 6.18.
    const auto end = make_end("buried-eye", hmpe);
    EXPECT_NEAR(number_of(end, ValueName::grip_margin), 2.780775, 1e-6);
    EXPECT_NEAR(number_of(end, ValueName::grip_margin_low), 1.184680, 1e-6);
    EXPECT_NEAR(number_of(end, ValueName::grip_margin_high), 6.284389, 1e-6);
    EXPECT_EQ(number_of(end, ValueName::friction), 0.07);
    EXPECT_EQ(number_of(end, ValueName::braid_angle_deg), 15.0);
    EXPECT_EQ(number_of(end, ValueName::packing), 1.0);
    EXPECT_EQ(number_of(end, ValueName::throat_share), 0.5);
    EXPECT_FALSE(cautions_about(end, "simple model"));
    // 42 D in polyester at 0.12 holds as 72 D at 0.07 do.
    const auto polyester = make_end("buried-eye", "12-strand polyester 10 mm");
    EXPECT_NEAR(number_of(polyester, ValueName::grip_margin), 2.780775, 1e-6);
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
    // At 0.05 and 12 degrees a tail of 72 D has 1.18468, so one of 60.78 D has 1.
    const auto cautioned = [](std::string_view tail) {
        return cautions_about(make_end("buried-eye", hmpe, {{"tail", tail}}), "simple model");
    };
    EXPECT_TRUE(cautioned("60 D"));
    EXPECT_FALSE(cautioned("61 D"));
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

/// A buried eye of 72 D in the hollow braid of 10 mm that has this constant of its own.
End end_in_own_braid(const Book& book) {
    const auto kind = book.kind("buried-eye");
    const auto rope = book.catalogue().rope("own-12-strand");
    auto end = kind && rope ? book.work_out(**kind, *rope, {}) : Unexpected(Fault{});
    EXPECT_TRUE(end);
    return end ? *std::move(end) : End{};
}

Book book_with_constant(const std::string& figures) {
    return book_with_ropes("braid_constant = { " + figures +
                           ", source = \"bench\", locator = \"test splices\", status = \"shop\" }");
}

/// Of both rows of the take-up together, in millimetres.
double net_spread(const End& end) {
    double spread = 0.0;
    for (const Row& row : end.rows) {
        spread += row.group == Group::take_up ? row.sd * 1000.0 : 0.0;
    }
    return spread;
}

TEST(OwnBraidConstant, IsOfTheLoadedSplice) {
    const Book book = book_with_constant("value = 0.21, sd = 0.01, spread = \"measured\"");
    const End end = end_in_own_braid(book);
    // Over the steps K = 0.21 takes up 7.6695678 D and K = 0.20 7.2413818 D. As spliced it is the
    // tables' 0.25: 9.4618953 D.
    EXPECT_NEAR(value_of(end, ValueName::take_up_settled_m), 76.695677848, near);
    EXPECT_NEAR(length_of(end, Item::take_up), 94.618953125, near);
    EXPECT_NEAR(length_of(end, Item::settling), 76.695677848 - 94.618953125, near);
    EXPECT_NEAR(net_spread(end), 4.281860742, near);
    const Row* row = find_row(end, Item::settling);
    ASSERT_NE(row, nullptr);
    EXPECT_EQ(row->origin, SpreadOrigin::measured);
    EXPECT_EQ(row->group, Group::take_up);
    EXPECT_EQ(book.citation(row->source).key, "bench");
    EXPECT_EQ(find_value(end, ValueName::braid_constant), 0.21);
}

TEST(OwnBraidConstant, LargerThanTheTablesHoldsAsSplicedToo) {
    // K = 0.30 takes up 11.9017186 D, 0.29 11.3944245 D; it cannot grow at the first load.
    const End end =
        end_in_own_braid(book_with_constant("value = 0.3, sd = 0.01, spread = \"measured\""));
    EXPECT_NEAR(length_of(end, Item::take_up), 119.017185722, near);
    EXPECT_EQ(find_row(end, Item::settling), nullptr);
    EXPECT_NEAR(net_spread(end), 5.072940972, near);
    // Without a spread K may be less by 0.05: 9.4618953 D.
    const End guessed = end_in_own_braid(book_with_constant("value = 0.3"));
    EXPECT_NEAR(net_spread(guessed), 24.398232597, near);
}

TEST(OwnBraidConstant, WithoutASpreadErrsAsMuchAsTheTablesAsSpliced) {
    const End end = end_in_own_braid(book_with_constant("value = 0.21"));
    EXPECT_NEAR(value_of(end, ValueName::take_up_settled_m), 76.695677848, near);
    EXPECT_NEAR(net_spread(end), 20.683085736, near); // less with K = 0.16
    EXPECT_EQ(find_row(end, Item::settling)->origin, SpreadOrigin::stated_guess);
}

} // namespace
} // namespace libsplice::testing
