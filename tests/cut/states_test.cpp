// The pulls that are kept apart: asked for, of the tables, and on the bench.
#include "jobs.h"
#include "tests/catalogue/folder.h"

namespace libsplice::testing {
namespace {

// Double braid of 8 mm and 14 kN: the reference tension of 8 kgf = 78.4532 N is a share of
// 0.0056038.
const Line sheet{
    {"name", "sheet"}, {"rope", "demo-db-poly-8"}, {"length", "10 m"}, {"prestretched", "yes"}};

CutSettings marked_at(std::string_view pull) {
    CutSettings settings;
    settings.marking_tension = *read_marking_tension(pull);
    return settings;
}

TEST(Stretch, OfTheRopesOwnRecord) {
    // 2.8 % at 20 %: at the reference tension 0.000784532. 10 m (1.000784532/1.028 - 1).
    const auto one = cut_one(with(sheet, {{"tension", "20 %"}}));
    EXPECT_NEAR(length_of(one.piece(), Item::stretch), -264.7419066, 1e-4);
    // Printed without a spread: a fifth of 264.7419066, over 1.028.
    EXPECT_NEAR(spread_of(one.piece(), Item::stretch), 51.50620751, 1e-4);
    EXPECT_EQ(find_row(one.piece(), Item::stretch)->origin, SpreadOrigin::stated_guess);
}

TEST(Stretch, OfDoubleBraidPolyesterAsPrinted) {
    // A rope of the shop's own without a stretch: 2.5 % at 20 %, at the reference tension
    // 0.000700475. 10 m (1.000700475/1.025 - 1).
    const Folder shop;
    shop.write("ropes/shop.toml",
               "[[rope]]\nid = \"shop-8\"\ntitle = \"a rope\"\nconstruction = \"double-braid\"\n"
               "fibre = \"polyester\"\ndiameter = \"8 mm\"\n"
               "breaking = { value = 14, unit = \"kN\", " +
                   cited + " }\n");
    const Book book = open_book({tables_folder(), shop.path()});
    const auto one = cut_one(with(sheet, {{"rope", "shop-8"}, {"tension", "20 %"}}), {}, book);
    EXPECT_NEAR(length_of(one.piece(), Item::stretch), -237.0685366, 1e-4);
    // 0.4 of 2.5 % as a guess: 16 % of the row, over 1.025.
    EXPECT_NEAR(spread_of(one.piece(), Item::stretch), 37.00582059, 1e-4);
}

TEST(Stretch, ForceAndShareAreOneTension) {
    const auto share = cut_one(with(sheet, {{"tension", "10 %"}}));
    const auto force = cut_one(with(sheet, {{"tension", "1.4 kN"}}));
    EXPECT_NEAR(length_of(share.piece(), Item::stretch), length_of(force.piece(), Item::stretch),
                near);
}

TEST(Stretch, NoneWhereBothPullsAreOne) {
    EXPECT_EQ(find_row(cut_one(sheet).piece(), Item::stretch), nullptr);
    const auto marked = cut_one(with(sheet, {{"tension", "300 N"}}), marked_at("300 N"));
    EXPECT_EQ(find_row(marked.piece(), Item::stretch), nullptr);
}

TEST(Stretch, MarkingTensionAboveTheTensionCutsLonger) {
    // Marked at 2.8 kN = 20 %, asked at the reference tension: 10 m (1.028/1.000784532 - 1).
    const auto one = cut_one(sheet, marked_at("2.8 kN"));
    EXPECT_NEAR(length_of(one.piece(), Item::stretch), 271.9413, 1e-3);
}

TEST(Stretch, OnTheLoadedPathOnly) {
    const auto bare = cut_one(with(sheet, {{"tension", "20 %"}}));
    const auto tailed = cut_one(with(
        sheet,
        {{"tension", "20 %"}, {"end_a", "bowline"}, {"end_b", "figure-eight"}, {"extra", "2 m"}}));
    EXPECT_EQ(find_row(bare.piece(), Item::stretch)->length,
              find_row(tailed.piece(), Item::stretch)->length);
    // A shackle of 50 mm does not stretch: 9.95 m do.
    const auto fitted = cut_one(with(sheet, {{"tension", "20 %"},
                                             {"end_a", "bowline"},
                                             {"end_a.fitting", "shackle"},
                                             {"end_a.fitting_length", "50 mm"}}));
    EXPECT_NEAR(length_of(fitted.piece(), Item::stretch), -264.7419066 * 0.995, 1e-4);
}

TEST(Stretch, WithoutStrengthIsRefused) {
    EXPECT_EQ(
        refuse_one(with(sheet, {{"rope", "double-braid polyester 20 mm"}, {"tension", "500 N"}}))
            .code,
        Code::strength_missing);
    // Print stops at 30 % for 12-strand HMPE.
    const auto beyond =
        refuse_one(with(sheet, {{"rope", "12-strand HMPE 5 mm"}, {"tension", "31 %"}}));
    EXPECT_EQ(beyond.code, Code::beyond_stretch);
    EXPECT_EQ(beyond.field, "tension");
    EXPECT_TRUE(says(beyond, "printed up to 30 % of breaking strength"));
    EXPECT_EQ(
        refuse_one(with(sheet, {{"rope", "solid-braid manila 8 mm"}, {"tension", "20 %"}})).code,
        Code::stretch_missing);
}

TEST(FirstStretch, MakesTheCutShorter) {
    // 0.5 to 2 % of HMPE, 1.25 % in the middle: 4 m / 1.0125 - 4 m; 0.75 % / root 3 of 4 m.
    const auto one = cut_one(with(plain_line, {{"prestretched", "no"}}));
    EXPECT_NEAR(length_of(one.piece(), Item::first_stretch), -49.38271605, near);
    EXPECT_NEAR(spread_of(one.piece(), Item::first_stretch), 17.32050808, 1e-6);
    EXPECT_EQ(find_row(cut_one(plain_line).piece(), Item::first_stretch), nullptr);
    // Nylon, 4 to 6 %: 4 m / 1.05 - 4 m.
    const auto nylon =
        cut_one(with(plain_line, {{"prestretched", "no"}, {"rope", "3-strand nylon 8 mm"}}));
    EXPECT_NEAR(length_of(nylon.piece(), Item::first_stretch), -190.4761905, near);
}

TEST(FirstStretch, UnknownIsCautionedOnEveryLine) {
    const auto cautioned = [](const Line& changes) {
        return cautions_about(cut_one(with(sheet, changes)).piece(), "first stretch");
    };
    EXPECT_TRUE(cautioned({{"fit", "exact"}, {"prestretched", "no"}}));
    EXPECT_FALSE(cautioned({{"fit", "exact"}, {"prestretched", "yes"}}));
    EXPECT_TRUE(cautioned({{"prestretched", "no"}}));
}

TEST(Slack, HasItsOwnRowAndSpread) {
    // 2 % for slack 12-strand HMPE: 4 m / 1.02 - 4 m, and 1 % of 4 m to either side.
    const auto one = cut_one(plain_line, marked_at("slack"));
    EXPECT_NEAR(length_of(one.piece(), Item::slack), -78.43137255, near);
    EXPECT_NEAR(spread_of(one.piece(), Item::slack), 40.0, 1e-9);
    const auto other_rope = cut_one(sheet, marked_at("slack"));
    EXPECT_NEAR(length_of(other_rope.piece(), Item::slack), -196.0784314, near);
    EXPECT_NEAR(spread_of(other_rope.piece(), Item::slack), 100.0, 1e-9);
}

TEST(Slack, IsRefusedForAnExactLine) {
    const auto fault = refuse_one(with(plain_line, {{"fit", "exact"}}), marked_at("slack"));
    EXPECT_EQ(fault.code, Code::slack_for_exact);
    EXPECT_EQ(fault.field, "fit");
}

TEST(Relaxed, WireTakesNoTension) {
    for (const std::string rope : {"demo-wire-4", "wire stainless-steel 3 mm"}) {
        const auto fault = refuse_one(with(sheet, {{"rope", rope}, {"tension", "100 N"}}));
        EXPECT_EQ(fault.code, Code::measured_relaxed) << rope;
        EXPECT_EQ(fault.field, "tension") << rope;
        const auto one =
            cut_one(with(sheet, {{"rope", rope}, {"prestretched", "no"}}), marked_at("3 kgf"));
        EXPECT_EQ(one.piece().line->states.marking_tension, newtons(0.0)) << rope;
        for (const Item item : {Item::stretch, Item::first_stretch, Item::slack}) {
            EXPECT_EQ(find_row(one.piece(), item), nullptr) << rope;
        }
    }
}

TEST(MarkingTension, IsWordOrForce) {
    EXPECT_EQ(read_marking_tension("reference")->basis, MarkingTension::Basis::reference);
    EXPECT_EQ(read_marking_tension("slack")->basis, MarkingTension::Basis::slack);
    EXPECT_NEAR(read_marking_tension("3 kgf")->load.si(), 29.41995, 1e-9);
    for (const std::string_view text : {"", "20 %", "tight", "3", "-3 kgf"}) {
        const auto pull = read_marking_tension(text);
        ASSERT_FALSE(pull) << text;
        EXPECT_EQ(pull.error().code, Code::not_a_tension) << text;
    }
    // The reference tension of 5 mm: 3.125 kgf.
    EXPECT_NEAR(cut_one(plain_line).piece().line->states.marking_tension.si(), 30.64578125, 1e-9);
}

} // namespace
} // namespace libsplice::testing
