// Strength, people, and the chance that an exact line falls outside its tolerance.
#include "jobs.h"

#include <cmath>

namespace libsplice::testing {
namespace {

TEST(Strength, IsThatOfTheWeakerEnd) {
    const Line line{{"name", "line"},
                    {"rope", "demo-laid-poly-12"},
                    {"length", "5 m"},
                    {"end_a", "tucked-eye"},
                    {"end_b", "bowline"}};
    const auto one = cut_one(line);
    ASSERT_TRUE(one.piece().strength.retained);
    EXPECT_NEAR(one.piece().strength.retained->share, 0.60, 1e-12); // the bowline's, against 0.90
    EXPECT_EQ(one.piece().strength.weaker, LineEnd::b);
}

TEST(Strength, DesignFactorIsRetainedStrengthOverTheLoad) {
    const Line line{{"name", "line"},
                    {"rope", "demo-laid-poly-12"},
                    {"length", "5 m"},
                    {"end_a", "tucked-eye"}};
    // 24 kN x 0.90 / 2 kN.
    const auto one = cut_one(with(line, {{"load", "2 kN"}}));
    ASSERT_TRUE(one.piece().strength.design_factor);
    EXPECT_NEAR(*one.piece().strength.design_factor, 10.8, 1e-9);
    EXPECT_FALSE(cut_one(line).piece().strength.design_factor);
    EXPECT_EQ(refuse_one(with(line, {{"load", "20 %"}})).code, Code::not_a_tension);
}

TEST(Load, ThatTheLineDoesNotHoldIsRefusedWithWhatWould) {
    // 24 kN x 0.60 = 14.4 kN with the bowline; 30 kN need 30 / 0.60 = 50 kN of rope.
    const Line line{
        {"name", "line"}, {"rope", "demo-laid-poly-12"}, {"length", "5 m"}, {"end_a", "bowline"}};
    const auto fault = refuse_one(with(line, {{"load", "30 kN"}}));
    EXPECT_EQ(fault.code, Code::overloaded);
    EXPECT_GE(static_cast<int>(fault.code), 400);
    EXPECT_EQ(fault.field, "load");
    EXPECT_EQ(fault.at.line, 2U);
    EXPECT_TRUE(says(fault, "14400 N") && says(fault, "50000 N")) << fault.text;
    cut_one(with(line, {{"load", "14.3 kN"}}));
    EXPECT_EQ(refuse_one(with(line, {{"load", "14.5 kN"}})).code, Code::overloaded);
}

TEST(Load, NamesARopeOfTheTablesThatHolds) {
    // 5 mm of 14 kN is too little for 15 kN; the next of that sort is named.
    const Line line{{"name", "line"}, {"rope", "demo-db-poly-8"}, {"length", "5 m"}};
    const auto fault = refuse_one(with(line, {{"load", "15 kN"}}));
    EXPECT_TRUE(says(fault, "such as demo-db-poly-10")) << fault.text;
}

TEST(Load, OverThePublishedShareIsACaution) {
    // 14.4 kN after the bowline: a fifth is 2.88 kN.
    const Line line{
        {"name", "line"}, {"rope", "demo-laid-poly-12"}, {"length", "5 m"}, {"end_a", "bowline"}};
    constexpr std::string_view words = "most that is published";
    EXPECT_FALSE(cautions_about(cut_one(with(line, {{"load", "2.87 kN"}})).piece(), words));
    EXPECT_TRUE(cautions_about(cut_one(with(line, {{"load", "2.89 kN"}})).piece(), words));
}

TEST(Load, OfNylonThatCyclesIsATenth) {
    const Line line{{"name", "rode"}, {"rope", "demo-plait-nylon-14"}, {"length", "5 m"}};
    const auto strength = cut_one(with(line, {{"load", "1 kN"}})).piece().strength;
    ASSERT_TRUE(strength.working_share);
    EXPECT_NEAR(strength.working_share->value, 0.10, 1e-12);
}

TEST(Load, OnARopeOfUnknownStrengthIsSaid) {
    const auto one =
        cut_one(with(plain_line, {{"rope", "solid-braid polyester 8 mm"}, {"load", "1 kN"}}));
    EXPECT_TRUE(cautions_about(one.piece(), "no source gives the breaking strength"));
    EXPECT_FALSE(one.piece().strength.design_factor);
    EXPECT_FALSE(cautions_about(cut_one(plain_line).piece(), "breaking strength"));
}

TEST(Strength, BendOfWireOverItsPinCounts) {
    // 4 mm wire on a 16 mm pin is 4 D: 75 %. The sleeve keeps more.
    const Line line{{"name", "stay"},
                    {"rope", "demo-wire-4"},
                    {"length", "5 m"},
                    {"end_a", "ferrule-eye"},
                    {"end_a.pin", "16 mm"},
                    {"end_a.eye", "60 mm"},
                    {"end_a.turn_back", "40 mm"}};
    const auto one = cut_one(line);
    ASSERT_TRUE(one.piece().strength.retained);
    EXPECT_NEAR(one.piece().strength.retained->share, 0.75, 1e-9);
    EXPECT_EQ(one.piece().strength.place, WeakPlace::pin);
    EXPECT_EQ(one.piece().strength.weaker, LineEnd::a);
}

TEST(Strength, WhatIsNotCountedIsNamed) {
    const Line line = with(plain_line, {{"end_a", "locked-eye"},
                                        {"end_a.pin", "10 mm"},
                                        {"end_a.fitting", "bow shackle"},
                                        {"end_a.fitting_length", "22 mm"}});
    const auto not_counted = cut_one(line).piece().strength.not_counted;
    const auto names = [&](std::string_view words) {
        return std::ranges::any_of(not_counted, [&](const std::string& what) {
            return what.find(words) != std::string::npos;
        });
    };
    EXPECT_TRUE(names("bow shackle at end a"));
    EXPECT_TRUE(names("the bend over the pin at end a"));
    EXPECT_FALSE(names("end b")); // only cut
}

TEST(Person, ShortTailIsRefused) {
    const Line line = with(plain_line, {{"end_b", "buried-eye"}, {"end_b.tail", "71 D"}});
    cut_one(line);
    const auto fault = refuse_one(with(line, {{"carries_person", "yes"}}));
    EXPECT_EQ(fault.code, Code::refused_for_person);
    EXPECT_EQ(fault.field, "end_b");
    EXPECT_EQ(fault.at.line, 2U);
    cut_one(with(line, {{"carries_person", "yes"}, {"end_b.tail", "72 D"}}));
}

TEST(Person, LoopKnotInBareHmpeIsRefused) {
    const Line line = with(plain_line, {{"end_a", "bowline"}});
    EXPECT_TRUE(cautions_about(cut_one(line).piece(), "slips"));
    const auto fault = refuse_one(with(line, {{"carries_person", "yes"}}));
    EXPECT_EQ(fault.code, Code::refused_for_person);
    EXPECT_EQ(fault.field, "end_a");
    cut_one(with(line, {{"carries_person", "yes"}, {"rope", "double-braid polyester 8 mm"}}));
}

TEST(Tolerance, ChanceOutsideOfAPlainLineIsTheTapes) {
    // Tape: 0.3 + 0.02 % of 4000 = 1.1 mm, over root 3. Both sides of 1 mm:
    // erfc(1 / (0.635085296 root 2)).
    const auto one = cut_one(with(plain_line, {{"fit", "exact"}, {"tolerance", "1 mm"}}));
    ASSERT_TRUE(one.piece().chance_outside);
    EXPECT_NEAR(*one.piece().chance_outside, std::erfc(1.0 / (0.635085296 * std::sqrt(2.0))), 1e-9);
    EXPECT_FALSE(cut_one(plain_line).piece().chance_outside);
}

TEST(Tolerance, OnlyTheLastEndsSplicesStillMoveTheLength) {
    // Take-up of one eye, what draws out with it, 7.364804, though both have it; tape 0.635085.
    const Line eyes = with(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    const auto one = cut_one(with(eyes, {{"fit", "exact"}, {"tolerance", "10 mm"}}));
    ASSERT_TRUE(one.piece().chance_outside);
    EXPECT_NEAR(*one.piece().chance_outside, std::erfc(10.0 / (7.392135 * std::sqrt(2.0))), 1e-6);
}

TEST(Tolerance, LargestCauseIsNamedWithWhatIsLeftWithoutIt) {
    // Take-up of one eye 7.364804; without it the tape's 0.635085 is left.
    const Line eyes = with(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    const auto one = cut_one(with(eyes, {{"fit", "exact"}, {"tolerance", "1 mm"}}));
    const auto& cause = one.piece().chance_cause;
    ASSERT_TRUE(cause);
    EXPECT_EQ(cause->item, Item::take_up);
    EXPECT_NE(cause->cure.find("test piece"), std::string_view::npos);
    EXPECT_NEAR(cause->after, std::erfc(1.0 / (0.635085296 * std::sqrt(2.0))), 1e-6);
    // Of a new rope 6.4 m long the first stretch is most.
    const auto fresh = cut_one(with(
        eyes,
        {{"fit", "exact"}, {"tolerance", "5 mm"}, {"prestretched", "no"}, {"length", "6.4 m"}}));
    EXPECT_EQ(fresh.piece().chance_cause->item, Item::first_stretch);
    EXPECT_FALSE(cut_one(with(eyes, {{"fit", "exact"}})).piece().chance_cause);
}

TEST(Tolerance, GoesWithAnExactLineOnly) {
    const auto fault = refuse_one(with(plain_line, {{"tolerance", "5 mm"}}));
    EXPECT_EQ(fault.code, Code::tolerance_without_exact);
    EXPECT_EQ(fault.field, "tolerance");
}

} // namespace
} // namespace libsplice::testing
