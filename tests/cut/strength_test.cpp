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
    ASSERT_TRUE(one.piece().retained);
    EXPECT_NEAR(one.piece().retained->share, 0.60, 1e-12); // the bowline's, against 0.90
    EXPECT_EQ(one.piece().weaker, LineEnd::b);
}

TEST(Strength, DesignFactorIsRetainedStrengthOverTheLoad) {
    const Line line{{"name", "line"},
                    {"rope", "demo-laid-poly-12"},
                    {"length", "5 m"},
                    {"end_a", "tucked-eye"}};
    // 24 kN x 0.90 / 2 kN.
    const auto one = cut_one(with(line, {{"load", "2 kN"}}));
    ASSERT_TRUE(one.piece().design_factor);
    EXPECT_NEAR(*one.piece().design_factor, 10.8, 1e-9);
    EXPECT_FALSE(cut_one(line).piece().design_factor);
    EXPECT_EQ(refuse_one(with(line, {{"load", "20 %"}})).code, Code::not_a_tension);
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
    ASSERT_TRUE(one.piece().outside);
    EXPECT_NEAR(*one.piece().outside, std::erfc(1.0 / (0.635085296 * std::sqrt(2.0))), 1e-9);
    EXPECT_FALSE(cut_one(plain_line).piece().outside);
}

TEST(Tolerance, OnlyTheLastEndsSplicesStillMoveTheLength) {
    // Take-up 12.5 and setting 2.078461 of one eye, though both have them; tape 0.635085.
    const Line eyes = with(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    const auto one = cut_one(with(eyes, {{"fit", "exact"}, {"tolerance", "10 mm"}}));
    ASSERT_TRUE(one.piece().outside);
    EXPECT_NEAR(*one.piece().outside, std::erfc(10.0 / (12.687527 * std::sqrt(2.0))), 1e-6);
}

TEST(Tolerance, GoesWithAnExactLineOnly) {
    const auto fault = refuse_one(with(plain_line, {{"tolerance", "5 mm"}}));
    EXPECT_EQ(fault.code, Code::tolerance_without_exact);
    EXPECT_EQ(fault.field, "tolerance");
}

} // namespace
} // namespace libsplice::testing
