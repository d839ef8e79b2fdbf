// Nothing enters a cut length but the ledger's rows, and the spare is what anyone can work out.
#include "jobs.h"

#include <cmath>

namespace libsplice::testing {
namespace {

/// Root sum of squares of the groups, within each of which spreads add up; in metres.
double spread_by_hand(const Piece& piece) {
    std::map<Group, double> groups;
    double squares = 0.0;
    for (const LedgerRow& entry : piece.ledger) {
        if (entry.row.group == Group::own) {
            squares += std::pow(entry.row.sd, 2);
        } else {
            groups[entry.row.group] += entry.row.sd;
        }
    }
    for (const auto& group : groups) {
        squares += std::pow(group.second, 2);
    }
    return std::sqrt(squares);
}

TEST(Ledger, AddsUpToTheCutExactly) {
    const auto run = cut_lines(many_sorts());
    EXPECT_TRUE(run.faults.empty());
    for (const Made& made : run.lines) {
        Nanometres sum = 0;
        for (const LedgerRow& entry : made.piece.ledger) {
            sum += entry.row.length;
        }
        EXPECT_EQ(sum, made.piece.cut);
        EXPECT_GT(made.piece.cut, 0);
    }
}

TEST(Ledger, StartsWithTheFinishedLengthAndEndsWithRounding) {
    const auto run = cut_lines(many_sorts());
    for (const Made& made : run.lines) {
        const auto& ledger = made.piece.ledger;
        ASSERT_GE(ledger.size(), 3U);
        EXPECT_EQ(ledger.front().row.item, Item::finished_length);
        EXPECT_EQ(ledger.front().row.length, made.piece.finished);
        EXPECT_EQ(ledger[ledger.size() - 2].row.item, Item::spare);
        EXPECT_EQ(ledger.back().row.item, Item::rounding);
    }
}

TEST(Ledger, SpareIsTheQuantileTimesTheCombinedSpread) {
    // 1, 5 and 50 % of the normal law.
    const std::map<double, double> quantiles{{0.01, 2.326347874}, {0.05, 1.644853627}, {0.5, 0.0}};
    for (const auto& [risk, quantile] : quantiles) {
        const auto run = cut_lines(many_sorts(), at_risk(risk));
        for (const Made& made : run.lines) {
            const bool stated = made.piece.line->fit.spare.has_value();
            const double expected = stated ? 25.0 : quantile * spread_by_hand(made.piece) * 1000.0;
            EXPECT_NEAR(length_of(made.piece, Item::spare), expected, 1e-5);
        }
    }
}

TEST(Ledger, CutIsRoundedUpToTheStep) {
    for (const double step : {1.0, 5.0, 10.0, 12.7}) {
        const Nanometres whole = to_nanometres(millimetres(step));
        const auto run = cut_lines(many_sorts(), step_of(millimetres(step)));
        for (const Made& made : run.lines) {
            const Row* rounding = find_row(made.piece, Item::rounding);
            ASSERT_NE(rounding, nullptr);
            EXPECT_GE(rounding->length, 0);
            EXPECT_LT(rounding->length, whole);
            EXPECT_EQ(made.piece.cut % whole, 0);
        }
    }
}

TEST(Ledger, StepIs5MillimetresAnd1ForAnExactLine) {
    const auto usual = cut_one(plain_line);
    EXPECT_EQ(usual.piece().line->fit.step, 5'000'000);
    const auto exact = cut_one(with(plain_line, {{"fit", "exact"}}));
    EXPECT_EQ(exact.piece().line->fit.step, 1'000'000);
}

TEST(Ledger, WholeLineByHand) {
    // 4 m, an eye of 36 mm on a pin of 12 mm, the other end bare. Eye, as worked out with the
    // kinds: 437.0695535. Two cuts with shears, 2 mm each, of which one is the eye's: 2. Without
    // spare 4439.0695535 mm.
    const auto one = cut_one(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")));
    const Piece& piece = one.piece();
    // Spreads: tape 0.3 + 0.02 % of 4000 = 1.1, over root 3 0.635085; take-up, what draws out
    // with it, 7.364804. Root of 0.403333 + 54.240336 = 7.392135; times 2.326347874 is 17.196678.
    EXPECT_NEAR(spread_of(piece, Item::finished_length), 0.635085296, 1e-8);
    EXPECT_NEAR(length_of(piece, Item::spare), 17.196678, 1e-5);
    // 4456.2662 is rounded up to 4460.
    EXPECT_NEAR(length_of(piece, Item::rounding), 3.7338, 1e-3);
    EXPECT_EQ(piece.cut, 4'460'000'000);
    EXPECT_EQ(piece.outside(piece.line->ends.last_end()),
              find_row(piece, Item::spare)->length + find_row(piece, Item::rounding)->length);
}

TEST(Ledger, LikeSpreadsOfBothEndsAddUp) {
    // The same braid lies over both buries: 7.364804 + 7.364804, not the root of their squares.
    // Tape 0.635085. Root of 216.961344 + 0.403333 = 14.743293; times 2.326347874.
    const auto one = cut_one(with(with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                                  eye_at("end_b", "buried-eye", "36 mm", "12 mm")));
    EXPECT_NEAR(length_of(one.piece(), Item::spare), 34.298028, 1e-5);
}

TEST(Ledger, ExtraAndWearBelongToTheEndMadeLast) {
    for (const auto& [first, last] : {std::pair{"a", LineEnd::b}, std::pair{"b", LineEnd::a}}) {
        const auto one = cut_one(
            with(plain_line, {{"extra", "300 mm"}, {"wear", "200 mm"}, {"first_end", first}}));
        const Piece& piece = one.piece();
        for (const LedgerRow& entry : piece.ledger) {
            if (entry.row.item >= Item::extra) {
                EXPECT_EQ(entry.end, last);
            }
        }
        EXPECT_NEAR(length_of(piece, Item::extra), 300.0, near);
        EXPECT_NEAR(length_of(piece, Item::wear), 200.0, near);
        EXPECT_NEAR(in_millimetres(piece.outside(last)),
                    500.0 + length_of(piece, Item::spare) + length_of(piece, Item::rounding), near);
    }
}

TEST(Ledger, CountsLinesPiecesAndRefusals) {
    const auto run = cut_lines({with(plain_line, {{"quantity", "3"}}), plain_line,
                                with(plain_line, {{"rope", "string"}, {"quantity", "7"}})});
    EXPECT_EQ(run.counts.lines, 3U);
    EXPECT_EQ(run.counts.pieces, 4U);
    EXPECT_EQ(run.counts.refused, 1U);
}

TEST(Ledger, CoverIsMilkedOutAtTheOtherEnd) {
    const Line line{{"name", "halyard"},
                    {"rope", "demo-cd-hmpe-6"},
                    {"prestretched", "yes"},
                    {"end_a", "stripped-eye"}};
    // 0.4 % of the length, at least 50 mm: 40 of 10 m, 80 of 20 m.
    const auto milked = [&](const Line& changes) {
        return length_or_none(cut_one(with(line, changes)).piece(), Item::milk_out);
    };
    EXPECT_NEAR(milked({{"length", "10 m"}}), 50.0, near);
    EXPECT_NEAR(milked({{"length", "20 m"}}), 80.0, near);
    EXPECT_EQ(milked({{"length", "10 m"}, {"end_b", "stripped-eye"}}), 0.0);
    const auto both = cut_one(with(line, {{"length", "10 m"}, {"end_b", "stripped-eye"}}));
    EXPECT_TRUE(cautions_about(both.piece(), "nowhere to milk"));
}

} // namespace
} // namespace libsplice::testing
