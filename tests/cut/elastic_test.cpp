// Shock cord: its way where it is shortest becomes the relaxed length that is cut.
#include "jobs.h"

#include <gmock/gmock.h>

namespace libsplice::testing {
namespace {

using ::testing::HasSubstr;

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

TEST(Elastic, IsStoppedAtItsLimit) {
    // 80 % over 2000 is 3600: 1000 of travel are the most.
    EXPECT_TRUE(cut_one(with(elastic, {{"travel", "1000 mm"}})).piece().elastic);
    const auto travelled = refuse_one(with(elastic, {{"travel", "1001 mm"}}));
    EXPECT_EQ(travelled.code, Code::elastic_overstretched);
    EXPECT_EQ(travelled.field, "travel");
    EXPECT_THAT(travelled.text, HasSubstr("80.05 %"));
    EXPECT_THAT(travelled.text, HasSubstr("stopped at 80 %"));
    EXPECT_THAT(travelled.rule, HasSubstr("common practice"));
    const auto stretched = refuse_one(with(elastic, {{"stretch", "200 %"}}));
    EXPECT_EQ(stretched.code, Code::elastic_overstretched);
    EXPECT_EQ(stretched.field, "stretch");
    EXPECT_EQ(refuse_one(with(elastic, {{"stretch", ""}, {"tension", "70 N"}})).field, "tension");
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
