// Sheaves, cleats and holes that a made line runs over and through.
#include "jobs.h"

#include <cmath>

namespace libsplice::testing {
namespace {

/// HMPE of 5 mm: an eye of 40 mm, then a bury of 72 x 5 = 360 mm, so from 40 to 400 mm.
const Line halyard =
    with(plain_line, with(eye_at("end_a", "buried-eye", "40 mm", "8 mm"), {{"length", "9 m"}}));

TEST(Passage, BuryOnTheSheaveAtFullHoist) {
    constexpr std::string_view words = "sheave lies on the bury";
    EXPECT_TRUE(cautions_about(cut_one(with(halyard, {{"headroom", "41 mm"}})).piece(), words));
    EXPECT_TRUE(cautions_about(cut_one(with(halyard, {{"headroom", "399 mm"}})).piece(), words));
    EXPECT_FALSE(cautions_about(cut_one(with(halyard, {{"headroom", "39 mm"}})).piece(), words));
    EXPECT_FALSE(cautions_about(cut_one(with(halyard, {{"headroom", "401 mm"}})).piece(), words));
    EXPECT_FALSE(cautions_about(cut_one(halyard).piece(), words));
}

TEST(Passage, RopeIsThickerOverABury) {
    // Over a tail of its own size rope is root 2 thicker: 7.07 mm.
    constexpr std::string_view words = "over the bury the rope is";
    EXPECT_TRUE(cautions_about(cut_one(with(halyard, {{"smallest_hole", "7 mm"}})).piece(), words));
    EXPECT_FALSE(
        cautions_about(cut_one(with(halyard, {{"smallest_hole", "7.1 mm"}})).piece(), words));
}

TEST(Passage, StopperHasToBeBiggerThanItsHole) {
    // A tight figure-eight is at least 3.0 D across the line: 24 mm in rope of 8 mm.
    const Line sheet{{"name", "sheet"},
                     {"rope", "demo-db-poly-8"},
                     {"length", "5 m"},
                     {"end_a", "figure-eight"}};
    constexpr std::string_view words = "the stopper is about";
    EXPECT_TRUE(
        cautions_about(cut_one(with(sheet, {{"smallest_hole", "24.1 mm"}})).piece(), words));
    EXPECT_FALSE(
        cautions_about(cut_one(with(sheet, {{"smallest_hole", "23.9 mm"}})).piece(), words));
}

TEST(Passage, KnotThatDoesNotGoThroughIsSaid) {
    // Three parts of 8 mm side by side need a hole of (1 + 2/root 3) x 8 = 17.24 mm.
    const Line sheet{
        {"name", "sheet"}, {"rope", "demo-db-poly-8"}, {"length", "5 m"}, {"end_a", "bowline"}};
    constexpr std::string_view words = "the knot is about";
    EXPECT_TRUE(
        cautions_about(cut_one(with(sheet, {{"smallest_hole", "17.2 mm"}})).piece(), words));
    EXPECT_FALSE(
        cautions_about(cut_one(with(sheet, {{"smallest_hole", "17.3 mm"}})).piece(), words));
}

TEST(Passage, BallHasToBeBiggerThanItsHole) {
    const Line ball{{"name", "halyard"},
                    {"rope", "demo-db-poly-5"},
                    {"length", "5 m"},
                    {"end_a", "stopper-ball"},
                    {"end_a.ball", "22 mm"}};
    constexpr std::string_view words = "the stopper is about";
    EXPECT_TRUE(cautions_about(cut_one(with(ball, {{"smallest_hole", "23 mm"}})).piece(), words));
    EXPECT_FALSE(cautions_about(cut_one(with(ball, {{"smallest_hole", "8 mm"}})).piece(), words));
}

TEST(LetOff, TensionInAStateWithoutLoadIsTakenOffWithACaution) {
    // 12-strand HMPE of 22 kN: 400 N are 1.818 % of it.
    const Line line = with(
        plain_line, {{"rope", "demo-b12-hmpe-5"}, {"length", "4242.4 mm"}, {"tension", "400 N"}});
    constexpr std::string_view words = "carries little or no load";
    for (const char* state : {"eased", "Lowered", "let out", "hanging slack"}) {
        const auto one = cut_one(with(line, {{"state", state}}));
        EXPECT_TRUE(cautions_about(one.piece(), words)) << state;
        const auto caution =
            std::ranges::find_if(one.piece().cautions, [&](const PieceCaution& each) {
                return each.caution.text.find(words) != std::string_view::npos;
            });
        ASSERT_NE(caution, one.piece().cautions.end());
        EXPECT_NEAR(caution->amounts[0].value * 1000.0, -length_of(one.piece(), Item::stretch),
                    1e-6);
    }
    EXPECT_FALSE(cautions_about(cut_one(with(line, {{"state", "hoisted"}})).piece(), words));
    EXPECT_FALSE(
        cautions_about(cut_one(with(line, {{"state", "eased"}, {"tension", ""}})).piece(), words));
}

TEST(NewRope, WhoseFirstStretchNoSourceGivesIsSaid) {
    const Line line{{"name", "sheet"}, {"rope", "demo-db-poly-8"}, {"length", "5 m"}};
    constexpr std::string_view words = "no source gives the first stretch";
    EXPECT_TRUE(cautions_about(cut_one(line).piece(), words));
    EXPECT_FALSE(cautions_about(cut_one(with(line, {{"prestretched", "yes"}})).piece(), words));
    EXPECT_FALSE(
        cautions_about(cut_one(with(plain_line, {{"prestretched", "no"}})).piece(), words));
}

const Line stripped = with(plain_line, {{"rope", "demo-cd-hmpe-5"},
                                        {"length", "15 m"},
                                        {"end_a", "stripped-eye"},
                                        {"end_a.eye", "40 mm"},
                                        {"end_a.pin", "8 mm"},
                                        {"end_b", "whipped"}});

TEST(Strip, IsMeasuredFromTheBearingPointOnTheFinishedLine) {
    const auto one = cut_one(with(stripped, {{"strip", "7.9 m"}}));
    // The mark stands before anything is buried, so beyond 7.9 m by both take-ups.
    const Piece& piece = one.piece();
    const double take_ups = length_of(piece, Item::take_up) + length_of(piece, Item::cover_take_up);
    EXPECT_NEAR(mark_of(piece, LineEnd::a, MarkName::cover_end) -
                    mark_of(piece, LineEnd::a, MarkName::far_throat),
                7900.0 - 40.0 + take_ups, 1e-3);
}

TEST(Strip, IsRefusedWhereTheCoverWouldEndOverTheBury) {
    EXPECT_EQ(refuse_one(with(stripped, {{"strip", "300 mm"}})).code, Code::strip_does_not_fit);
}

TEST(Strip, NeedsAnEndThatIsStripped) {
    const auto fault =
        refuse_one(with(stripped, {{"strip", "3 m"}, {"end_a", "bowline"}, {"end_a.eye", ""}}));
    EXPECT_EQ(fault.code, Code::strip_does_not_fit);
    EXPECT_EQ(fault.field, "strip");
    EXPECT_EQ(refuse_one(with(stripped, {{"strip", "3 m"}, {"end_a.cover_end", "3 m"}})).code,
              Code::cannot_be_both);
}

TEST(Strip, CoverReachesBeyondTheCleat) {
    constexpr std::string_view words = "does not reach far enough beyond the cleat";
    const Line line = with(stripped, {{"strip", "7.9 m"}});
    // Common practice keeps 300 to 500 mm of cover there: 400 mm.
    EXPECT_TRUE(cautions_about(cut_one(with(line, {{"cleat", "8.29 m"}})).piece(), words));
    EXPECT_FALSE(cautions_about(cut_one(with(line, {{"cleat", "8.31 m"}})).piece(), words));
}

TEST(Strip, CoverEndIsNotParkedOnTheSheave) {
    // The cover's tail of 30 x 5 = 150 mm lies from 7.75 to 7.9 m.
    const Line line = with(stripped, {{"strip", "7.9 m"}});
    EXPECT_TRUE(
        cautions_about(cut_one(with(line, {{"headroom", "7.8 m"}})).piece(), "hoisted, the"));
    EXPECT_TRUE(cautions_about(
        cut_one(with(line, {{"headroom", "1 m"}, {"travel", "6.8 m"}})).piece(), "lowered, the"));
    EXPECT_FALSE(cautions_about(
        cut_one(with(line, {{"headroom", "1 m"}, {"travel", "6.7 m"}})).piece(), "lowered, the"));
}

TEST(Strip, BothPlacesOfTheCoverAreWorkedOut) {
    // The cover ends at 7.9 m. Hoisted the sheave lies at 1 m and the cleat at 8.4; lowered both
    // lie 6.7 m farther along the line.
    const Line line = with(stripped, {{"strip", "7.9 m"}, {"headroom", "1 m"}, {"cleat", "8.4 m"}});
    const auto hoisted = cut_one(line);
    const AlongLine& along = hoisted.piece().line->along;
    ASSERT_TRUE(along.cover_hoisted);
    EXPECT_NEAR(along.cover_hoisted->past_sheave->si(), 6.9, 1e-9);
    EXPECT_NEAR(along.cover_hoisted->at_cleat->si(), 0.5, 1e-9);
    EXPECT_FALSE(along.cover_lowered);
    const auto travelled = cut_one(with(line, {{"travel", "6.7 m"}}));
    const auto& lowered = travelled.piece().line->along.cover_lowered;
    ASSERT_TRUE(lowered);
    EXPECT_NEAR(lowered->past_sheave->si(), 0.2, 1e-9);
    EXPECT_NEAR(lowered->at_cleat->si(), 7.2, 1e-9);
}

TEST(Sleeve, IsCutLongerThanItCovers) {
    // It loses 5 to 15 %, 10 % in the middle: 0.9 m needs 1.0 m; sd 0.05/root 3 of it over 0.9.
    const auto one = cut_one(with(plain_line, {{"sleeve", "0.9 m at 2 m"}}));
    ASSERT_TRUE(one.piece().line->along.sleeve);
    EXPECT_NEAR(one.piece().line->along.sleeve->cut.si(), 1.0, 1e-12);
    EXPECT_NEAR(one.piece().line->along.sleeve->sd.si(), 0.05 / std::sqrt(3.0) / 0.9, 1e-12);
    EXPECT_EQ(one.piece().cut, cut_one(plain_line).piece().cut);
    for (const char* wrong : {"0.9 m", "0.9 m at", "at 2 m", "0 m at 2 m", "1 at 2"}) {
        EXPECT_EQ(refuse_one(with(plain_line, {{"sleeve", wrong}})).code, Code::not_a_length)
            << wrong;
    }
}

TEST(Turnable, NeedsEndsThatAreAlike) {
    const Line line = with(plain_line, {{"reversible", "yes"}});
    cut_one(line);
    cut_one(with(line, with(eye_at("end_a", "buried-eye", "40 mm", "8 mm"),
                            eye_at("end_b", "buried-eye", "40 mm", "8 mm"))));
    const auto fault = refuse_one(with(line, eye_at("end_a", "buried-eye", "40 mm", "8 mm")));
    EXPECT_EQ(fault.code, Code::cannot_be_both);
    EXPECT_EQ(fault.field, "reversible");
}

TEST(Wash, AddsShrinkageWhereASourceGivesIt) {
    // New nylon soaked, caving notes: 10 to 15 % shorter. 4 m / (1 - 0.125) - 4 m = 571.43 mm.
    const Line nylon = with(plain_line, {{"rope", "8-plait nylon 10 mm"}, {"wash", "yes"}});
    EXPECT_NEAR(length_of(cut_one(nylon).piece(), Item::shrinkage), 4000.0 / 0.875 - 4000.0, near);
    const auto hmpe = cut_one(with(plain_line, {{"wash", "yes"}}));
    EXPECT_EQ(find_row(hmpe.piece(), Item::shrinkage), nullptr);
    EXPECT_TRUE(cautions_about(hmpe.piece(), "shrinks in the wash"));
}

} // namespace
} // namespace libsplice::testing
