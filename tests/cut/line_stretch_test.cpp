// A made line at other pulls than the one that its length was asked at.
#include "jobs.h"
#include "tests/catalogue/folder.h"

namespace libsplice::testing {
namespace {

// 14 kN, 2.8 % at 20 %; reference tension 78.4532 N: 0.0784532 %.
const Line sheet{
    {"name", "sheet"}, {"rope", "demo-db-poly-8"}, {"length", "10 m"}, {"prestretched", "yes"}};

TEST(LengthsAtPulls, RunFromTheReferenceTensionUp) {
    const auto one = cut_one(with(sheet, {{"load", "700 N"}}));
    const auto& lengths = one.piece().lengths;
    // 10 m (1 + e)/1.000784532: at 700 N e = 0.7 %, at 10, 20 and 30 % 1.4, 2.8 and 4.2 %.
    ASSERT_EQ(lengths.size(), 5U);
    const double expected[] = {10.0, 10.06210596, 10.13205108, 10.27194133, 10.41183158};
    const double pulls[] = {78.4532, 700.0, 1400.0, 2800.0, 4200.0};
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        EXPECT_NEAR(lengths[i].length.si(), expected[i], 1e-7) << i;
        EXPECT_NEAR(lengths[i].pull->si(), pulls[i], 1e-6) << i;
        // A fifth of the difference, over 1.000784532.
        EXPECT_NEAR(lengths[i].sd.si(), (expected[i] - 10.0) * 0.2 / 1.000784532, 1e-7) << i;
    }
}

TEST(LengthsAtPulls, OwnTensionStandsOnce) {
    const auto one = cut_one(with(sheet, {{"tension", "20 %"}}));
    const auto& lengths = one.piece().lengths;
    ASSERT_EQ(lengths.size(), 4U);
    EXPECT_NEAR(lengths[2].length.si(), 10.0, 1e-12);
    EXPECT_NEAR(lengths[2].sd.si(), 0.0, 1e-12);
    // 10 m x 1.000784532/1.028.
    EXPECT_NEAR(lengths[0].length.si(), 9.735258093, 1e-8);
}

TEST(LengthsAtPulls, NoneWhereNothingIsKnown) {
    for (const std::string rope : {"demo-wire-4", "demo-shock-5", "solid-braid polyester 8 mm"}) {
        EXPECT_TRUE(cut_one(with(sheet, {{"rope", rope}})).piece().lengths.empty()) << rope;
    }
}

TEST(StretchAtLoad, IsOfTheLoadElseOfTheTension) {
    // 10 m x (0.7 - 0.0784532) % / 1.000784532.
    const auto loaded = cut_one(with(sheet, {{"load", "700 N"}}));
    const auto& at_load = loaded.piece().stretch;
    ASSERT_TRUE(at_load);
    EXPECT_NEAR(at_load->longer.si(), 0.06210596, 1e-7);
    EXPECT_NEAR(at_load->sd.si(), 0.06210596 * 0.2 / 1.000784532, 1e-7);
    // 10 m less 10 m x 1.000784532/1.028.
    const auto pulled = cut_one(with(sheet, {{"tension", "20 %"}}));
    EXPECT_NEAR(pulled.piece().stretch->longer.si(), 0.2647419066, 1e-8);
    EXPECT_FALSE(cut_one(sheet).piece().stretch);
}

TEST(StretchAtLoad, IsNotGuessedFarBeyondTheLastPublishedValue) {
    // Published at 20 % of 14 kN: up to 30 %, 4.2 kN, it is said.
    const auto near_by = cut_one(with(sheet, {{"load", "4.2 kN"}}));
    EXPECT_TRUE(near_by.piece().stretch);
    const auto far_beyond = cut_one(with(sheet, {{"load", "4.3 kN"}}));
    EXPECT_FALSE(far_beyond.piece().stretch);
    EXPECT_NE(far_beyond.piece().line->pulls.load_not_known.find("20 %"), std::string::npos);
    for (const LengthAtPull& at : far_beyond.piece().lengths) {
        EXPECT_LE(at.pull->si(), 4200.0 + 1e-6);
    }
}

TEST(StretchAtLoad, StopsWhereItsCurveStops) {
    // 12-strand HMPE is printed up to 30 %; 700 N of 2 kN are 35 %.
    const Folder shop;
    shop.write("ropes/shop.toml",
               "[[rope]]\nid = \"shop-5\"\ntitle = \"a rope\"\nconstruction = \"12-strand\"\n"
               "fibre = \"HMPE\"\ndiameter = \"5 mm\"\n"
               "breaking = { value = 2, unit = \"kN\", " +
                   cited + " }\n");
    const Book book = open_book({tables_folder(), shop.path()});
    const auto one = cut_one(with(sheet, {{"rope", "shop-5"}, {"load", "700 N"}}), {}, book);
    EXPECT_FALSE(one.piece().stretch);
    EXPECT_NE(one.piece().line->pulls.load_not_known.find("30 %"), std::string::npos);
    const auto unknown =
        cut_one(with(sheet, {{"rope", "solid-braid polyester 8 mm"}, {"load", "700 N"}}));
    EXPECT_FALSE(unknown.piece().stretch);
    EXPECT_TRUE(unknown.piece().line->pulls.load_not_known.empty());
}

} // namespace
} // namespace libsplice::testing
