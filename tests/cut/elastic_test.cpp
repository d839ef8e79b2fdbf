// Shock cord: its way where it is shortest becomes the relaxed length that is cut.
#include "jobs.h"

namespace libsplice::testing {
namespace {

const Line elastic{{"name", "trapeze elastic"},
                   {"rope", "demo-shock-5"},
                   {"length", "2.6 m"},
                   {"stretch", "30 %"}};

TEST(Elastic, IsCutShorterByItsStretch) {
    // 2600 / 1.3 = 2000.
    const auto one = cut_one(elastic);
    EXPECT_NEAR(length_of(one.piece(), Item::stretch), -600.0, near);
    EXPECT_NEAR(spread_of(one.piece(), Item::stretch), 0.0, 1e-12);
    ASSERT_TRUE(one.piece().elastic);
    EXPECT_EQ(one.piece().elastic->relaxed, 2'000'000'000);
    EXPECT_NEAR(one.piece().elastic->shortest, 0.3, 1e-12);
    EXPECT_FALSE(one.piece().elastic->longest);
    // The invented curve: 30 % at 30 N.
    EXPECT_NEAR(one.piece().elastic->pull_shortest->si(), 30.0, 1e-9);
    EXPECT_NEAR(length_of(cut_one(with(elastic, {{"stretch", "0.3"}})).piece(), Item::stretch),
                -600.0, near);
}

TEST(Elastic, TensionIsTurnedIntoStretchByItsCurve) {
    // 50 % at 45 N: 2600 / 1.5 - 2600. Its spread is a fifth of that, over 1.5.
    const auto one = cut_one(with(elastic, {{"stretch", ""}, {"tension", "45 N"}}));
    EXPECT_NEAR(length_of(one.piece(), Item::stretch), -866.6666667, near);
    EXPECT_NEAR(spread_of(one.piece(), Item::stretch), 115.5555556, 1e-6);
    EXPECT_NEAR(one.piece().elastic->shortest, 0.5, 1e-12);
}

TEST(Elastic, WithNeitherItsLengthIsTheRelaxedOne) {
    const auto one = cut_one(with(elastic, {{"stretch", ""}, {"travel", "5 m"}}));
    EXPECT_EQ(find_row(one.piece(), Item::stretch), nullptr);
    EXPECT_FALSE(one.piece().elastic);
}

TEST(Elastic, TravelPullsItOutFarther) {
    // (2600 + 400) / 2000 - 1 = 50 %, which the invented curve gives at 45 N.
    const auto one = cut_one(with(elastic, {{"travel", "400 mm"}}));
    EXPECT_NEAR(*one.piece().elastic->longest, 0.5, 1e-12);
    EXPECT_NEAR(one.piece().elastic->pull_longest->si(), 45.0, 1e-9);
    EXPECT_FALSE(cautions_about(one.piece(), "beyond its working range"));
    EXPECT_FALSE(cautions_about(one.piece(), "slack"));
    EXPECT_TRUE(cautions_about(one.piece(), "loses some of its pull"));
    // 3210 / 2000 - 1 = 60.5 %.
    EXPECT_TRUE(cautions_about(cut_one(with(elastic, {{"travel", "610 mm"}})).piece(),
                               "beyond its working range"));
}

TEST(Elastic, LittleStretchMayHangSlack) {
    EXPECT_TRUE(cautions_about(cut_one(with(elastic, {{"stretch", "29 %"}})).piece(), "slack"));
    EXPECT_TRUE(cautions_about(cut_one(with(elastic, {{"stretch", "0 %"}})).piece(), "slack"));
}

/// The first caution with these words, with its amounts.
const PieceCaution& caution_about(const Piece& piece, std::string_view words) {
    const auto found = std::ranges::find_if(piece.cautions, [&](const PieceCaution& caution) {
        return caution.caution.text.find(words) != std::string_view::npos;
    });
    if (found == piece.cautions.end()) {
        ADD_FAILURE() << "no caution about " << words;
        return piece.cautions.front();
    }
    return *found;
}

TEST(Elastic, PastItsCustomaryLimitIsCutWithTheCordThatWouldStayInside) {
    // 80 % over 2000 is 3600: 1000 of travel are the most.
    constexpr std::string_view words = "custom to stop";
    EXPECT_FALSE(cautions_about(cut_one(with(elastic, {{"travel", "1000 mm"}})).piece(), words));
    // (2600 + 1200)/2000 - 1 = 90 %. A cord of 3800/1.8 = 2111.1 mm stays inside; over the way of
    // 2600 it is pulled out 2600/2111.1 - 1 = 23.158 %.
    const auto far = cut_one(with(elastic, {{"travel", "1200 mm"}}));
    const auto& caution = caution_about(far.piece(), words);
    ASSERT_EQ(caution.amounts.size(), 4U);
    EXPECT_NEAR(caution.amounts[0].value, 0.90, 1e-9);
    EXPECT_NEAR(caution.amounts[1].value, 0.80, 1e-9);
    EXPECT_NEAR(caution.amounts[2].value, 2.1111111, 1e-6);
    EXPECT_NEAR(caution.amounts[3].value, 0.2315789, 1e-6);
    EXPECT_EQ(length_of(far.piece(), Item::stretch), -600.0);
    // The cord that is advised stays inside.
    EXPECT_FALSE(cautions_about(
        cut_one(with(elastic, {{"travel", "1200 mm"}, {"stretch", "23.15 %"}})).piece(), words));
}

TEST(Elastic, WayThatGrowsTooMuchHasNoCord) {
    // (1000 + 900)/1.8 = 1055.6 mm is longer than the way itself.
    const auto one = cut_one(with(elastic, {{"length", "1 m"}, {"travel", "900 mm"}}));
    EXPECT_TRUE(cautions_about(one.piece(), "no cord stays inside"));
    const auto stretched = cut_one(with(elastic, {{"stretch", "200 %"}}));
    EXPECT_NEAR(caution_about(stretched.piece(), "custom to stop").amounts[3].value, 0.8, 1e-9);
}

TEST(Elastic, FittingsAreNotPulledOut) {
    // (2600 - 80) / 1.3 = 1938.461538.
    const auto one = cut_one(with(
        elastic,
        {{"end_a", "barrel-noose"}, {"end_a.fitting", "ring"}, {"end_a.fitting_length", "80 mm"}}));
    EXPECT_NEAR(length_of(one.piece(), Item::stretch), -581.5384615, near);
}

TEST(Elastic, WhatDoesNotGoTogetherIsRefused) {
    const auto both = refuse_one(with(elastic, {{"tension", "20 N"}}));
    EXPECT_EQ(both.code, Code::cannot_be_both);
    EXPECT_EQ(both.field, "stretch");
    for (const std::string rope : {"demo-b12-hmpe-4", "demo-wire-4"}) {
        EXPECT_EQ(refuse_one(with(elastic, {{"rope", rope}})).code, Code::cannot_be_both) << rope;
    }
    const Line unknown = with(elastic, {{"rope", "shock-cord rubber 6 mm"}});
    EXPECT_FALSE(cut_one(unknown).piece().elastic->pull_shortest);
    EXPECT_EQ(refuse_one(with(unknown, {{"stretch", ""}, {"tension", "20 N"}})).code,
              Code::stretch_missing);
    EXPECT_EQ(refuse_one(with(elastic, {{"stretch", ""}, {"tension", "100 N"}})).code,
              Code::beyond_stretch);
    EXPECT_EQ(refuse_one(with(elastic, {{"stretch", "much"}})).code, Code::not_a_number);
    EXPECT_EQ(refuse_one(with(elastic, {{"stretch", "-5 %"}})).code, Code::value_out_of_range);
}

} // namespace
} // namespace libsplice::testing
