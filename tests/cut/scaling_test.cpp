// How a cut length answers when the line, the shop or the units change.
#include "jobs.h"

namespace libsplice::testing {
namespace {

const Line two_ends = with(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                           {{"end_b", "figure-eight"}, {"end_b.tail", "60 mm"}});

TEST(Change, TwiceTheSizeDoublesWhatIsGeometry) {
    const Line twice_eye = with(with(plain_line, eye_at("end_a", "locked-eye", "72 mm", "24 mm")),
                                {{"rope", "12-strand HMPE 10 mm"},
                                 {"length", "8 m"},
                                 {"prestretched", "no"},
                                 {"end_b", "figure-eight"},
                                 {"end_b.tail", "120 mm"},
                                 {"end_a.fitting_length", "44 mm"},
                                 {"end_a.measured", "pin-centre"}});
    const Line once_eye = with(with(plain_line, eye_at("end_a", "locked-eye", "36 mm", "12 mm")),
                               {{"prestretched", "no"},
                                {"end_b", "figure-eight"},
                                {"end_b.tail", "60 mm"},
                                {"end_a.fitting_length", "22 mm"},
                                {"end_a.measured", "pin-centre"}});
    const auto once = cut_one(once_eye);
    const auto twice = cut_one(twice_eye);
    const std::set<Item> of_the_bench{Item::cutting_loss, Item::spare, Item::rounding};
    ASSERT_EQ(once.piece().ledger.size(), twice.piece().ledger.size());
    for (const LedgerRow& entry : once.piece().ledger) {
        const Item item = entry.row.item;
        if (!of_the_bench.contains(item)) {
            EXPECT_NEAR(length_of(twice.piece(), item, entry.end),
                        2.0 * length_of(once.piece(), item, entry.end), near)
                << item_names()[static_cast<std::size_t>(item)];
        }
    }
}

TEST(Change, SwappedEndsCutTheSame) {
    const Line turned =
        with(with(plain_line, eye_at("end_b", "buried-eye", "36 mm", "12 mm")),
             {{"end_a", "figure-eight"}, {"end_a.tail", "60 mm"}, {"first_end", "b"}});
    EXPECT_EQ(cut_one(two_ends).piece().cut, cut_one(turned).piece().cut);
}

TEST(Change, LongerLineGrowsAtTheRateOfStretchAndFirstStretch) {
    // At 20 % HMPE of the table is 0.8 % long, at the reference tension (31 N of 22 kN) 0.0056 %;
    // and 1.25 % of first stretch.
    const double rate = (1.0 + 0.008 * 30.64578125 / 22000.0 / 0.2) / 1.008 / 1.0125;
    const Line loaded = with(two_ends, {{"rope", "demo-b12-hmpe-5"},
                                        {"prestretched", "no"},
                                        {"tension", "20 %"},
                                        {"spare", "0 mm"}});
    const auto cut = [&](const std::string& length) {
        return in_millimetres(
            cut_one(with(loaded, {{"length", length}}), step_of(millimetres(1.0))).piece().cut);
    };
    EXPECT_NEAR(cut("9 m") - cut("4 m"), 5000.0 * rate, 1.0);
    EXPECT_NEAR(cut("54 m") - cut("4 m"), 50000.0 * rate, 1.0);
}

TEST(Change, LowerRiskIsNeverShorter) {
    std::vector<Nanometres> before;
    for (const double risk : {0.5, 0.2, 0.05, 0.01, 0.001, 1e-6}) {
        std::vector<Nanometres> cuts;
        for (const Made& made : cut_lines(many_sorts(), at_risk(risk)).lines) {
            cuts.push_back(made.piece.cut);
        }
        for (std::size_t i = 0; i < before.size(); ++i) {
            EXPECT_GE(cuts.at(i), before.at(i)) << risk;
        }
        before = cuts;
    }
}

TEST(Change, FinerStepIsNeverLongerAndWithinAStep) {
    const auto coarse = cut_lines(many_sorts(), step_of(millimetres(10.0)));
    const auto fine = cut_lines(many_sorts(), step_of(millimetres(1.0)));
    for (std::size_t i = 0; i < coarse.lines.size(); ++i) {
        const Nanometres more = coarse.lines[i].piece.cut - fine.lines[i].piece.cut;
        EXPECT_GE(more, 0);
        EXPECT_LT(more, 10'000'000);
    }
}

TEST(Change, InchesAreTheSameLengths) {
    const Line metric{{"name", "line"},          {"rope", "12-strand HMPE 6.35 mm"},
                      {"length", "6172.2 mm"},   {"end_a", "buried-eye"},
                      {"end_a.eye", "63.5 mm"},  {"end_a.pin", "12.7 mm"},
                      {"end_b", "figure-eight"}, {"end_b.tail", "76.2 mm"}};
    const Line imperial{{"name", "line"},          {"rope", "12-strand HMPE 1/4 in"},
                        {"length", "20 ft 3 in"},  {"end_a", "buried-eye"},
                        {"end_a.eye", "2 1/2 in"}, {"end_a.pin", "1/2 in"},
                        {"end_b", "figure-eight"}, {"end_b.tail", "3 in"}};
    const auto in_metres = cut_one(metric);
    const auto in_inches = cut_one(imperial);
    EXPECT_EQ(in_metres.piece().cut, in_inches.piece().cut);
    EXPECT_EQ(in_metres.piece().check->reads, in_inches.piece().check->reads);
}

TEST(Change, UnitOfTheHeadingCounts) {
    const auto run = cut_text("name,rope,length [ft],end_a,end_a.eye [mm]\n"
                              "line,12-strand HMPE 5 mm,10,buried-eye,50\n");
    EXPECT_TRUE(run.faults.empty());
    EXPECT_EQ(run.lines.at(0).piece.finished, 3'048'000'000);
    EXPECT_NEAR(length_of(run.lines.at(0).piece, Item::throat_to_bearing), -50.0, near);
}

TEST(Change, LengthMarksAndSpareDoNotDependOnTheNames) {
    const auto plain = cut_one(two_ends);
    const auto named = cut_one(with(two_ends, {{"name", "kicker, \"upper\""},
                                               {"boat", "No 7"},
                                               {"state", "hoisted"},
                                               {"note", "blue"},
                                               {"quantity", "12"}}));
    EXPECT_EQ(plain.piece().cut, named.piece().cut);
    EXPECT_EQ(named.piece().quantity, 12);
    EXPECT_EQ(named.run.lines.front().name, "kicker, \"upper\"");
}

} // namespace
} // namespace libsplice::testing
