// Lines whose one kind accounts for both ends: an item made whole.
#include "jobs.h"

namespace libsplice::testing {
namespace {

Nanometres row_of(const Piece& piece, Item item) {
    Nanometres sum = 0;
    for (const LedgerRow& entry : piece.ledger) {
        sum += entry.row.item == item ? entry.row.length : 0;
    }
    return sum;
}

TEST(MadeWhole, FourPartsOfAShackleLieOverItsLength) {
    const auto run = cut_lines({{{"name", "shackle"},
                                 {"rope", "12-strand HMPE 4 mm"},
                                 {"length", "60 mm"},
                                 {"prestretched", "yes"},
                                 {"spare", "0 mm"},
                                 {"end_a", "soft-shackle"},
                                 {"end_a.pin", "6 mm"}}});
    ASSERT_TRUE(run.faults.empty());
    const Piece& piece = run.lines.front().piece;
    EXPECT_EQ(row_of(piece, Item::further_parts), 180'000'000);
    // 4 x 60, 2 (10 pi - 12) round the bearings, 56 + 160 + 160 + 4: 658.832, up to 5 mm.
    EXPECT_EQ(piece.cut, 660'000'000);
}

TEST(MadeWhole, PinCentresCountAtBothEyesOfAStrop) {
    const Line strop{{"name", "strop"},      {"rope", "12-strand HMPE 3 mm"},
                     {"length", "800 mm"},   {"prestretched", "yes"},
                     {"spare", "0 mm"},      {"end_a", "two-eye-strop"},
                     {"end_a.eye", "40 mm"}, {"end_a.pin", "10 mm"}};
    const auto run = cut_lines({with(strop, {{"end_a.measured", "pin-centre"}})});
    ASSERT_TRUE(run.faults.empty());
    EXPECT_EQ(row_of(run.lines.front().piece, Item::pin_centre), 10'000'000); // 5 at each
}

TEST(MadeWhole, LoopShorterThanTwiceItsTailIsRefused) {
    // As spliced both tails lie along 2 (216 + 28.386) = 488.77 mm; the loop is made longer than it
    // comes out by its take-up, settled, 2 x 13.893: 460.99 mm.
    Line loop{{"name", "loop"},
              {"rope", "12-strand HMPE 3 mm"},
              {"length", "460 mm"},
              {"prestretched", "yes"},
              {"end_a", "endless-loop"}};
    EXPECT_EQ(cut_lines({loop}).lines.front().fault->code, Code::buries_overlap);
    loop["length"] = "461 mm";
    EXPECT_FALSE(cut_lines({loop}).lines.front().fault);
}

TEST(MadeWhole, SlackCoverForTwoSplicesNeedsTwentyFids) {
    const auto warned = [](const std::string& length) {
        const auto run = cut_lines({{{"name", "sheet"},
                                     {"rope", "core-dependent HMPE 6 mm"},
                                     {"length", length},
                                     {"prestretched", "yes"},
                                     {"end_a", "core-eye"},
                                     {"end_b", "core-eye"}}});
        const auto& cautions = run.lines.front().piece.cautions;
        return std::ranges::any_of(cautions, [](const auto& one) {
            return one.caution.text.find("slip knots") != std::string_view::npos;
        });
    };
    EXPECT_TRUE(warned("1.4 m")); // two slip knots 1.26 m from the ends need 2.52 m
    EXPECT_FALSE(warned("2.6 m"));
}

} // namespace
} // namespace libsplice::testing
