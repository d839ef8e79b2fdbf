// Lines of a pair, lines that close on themselves, and what rules ask of rope for people.
#include "jobs.h"

#include <cmath>

namespace libsplice::testing {
namespace {

const Line leg = with(plain_line, {{"boat", "Cat 1"}, {"pair", "bridle"}, {"lot", "7"}});

TEST(Pairs, MatchWithinThreeMillimetres) {
    EXPECT_EQ(cut_lines({leg, with(leg, {{"length", "4.003 m"}})}).counts.refused, 0U);
    const auto run = cut_lines({leg, with(leg, {{"length", "4.0031 m"}})});
    ASSERT_TRUE(run.lines[1].fault);
    EXPECT_EQ(run.lines[1].fault->code, Code::pair_unlike);
    EXPECT_EQ(run.lines[1].fault->at.line, 3U);
}

TEST(Pairs, AreOfOneRopeAndOneLot) {
    for (const Line& other :
         {with(leg, {{"rope", "12-strand HMPE 4 mm"}}), with(leg, {{"lot", "8"}})}) {
        const auto run = cut_lines({leg, other});
        ASSERT_TRUE(run.lines[1].fault);
        EXPECT_EQ(run.lines[1].fault->code, Code::pair_unlike);
    }
}

TEST(Pairs, LegIsComparedWithLeg) {
    // What both legs share falls out. Tape 0.3 mm either way: root(2/3) x 0.3 = 0.244949 mm.
    const auto run = cut_lines({leg, leg});
    ASSERT_TRUE(run.lines[1].piece.chance_apart);
    EXPECT_NEAR(*run.lines[1].piece.chance_apart, std::erfc(3.0 / (0.244949 * std::sqrt(2.0))),
                1e-9);
    const Line eyes = with(with(leg, eye_at("end_a", "buried-eye", "36 mm", "12 mm")),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    const auto one = cut_one(with(eyes, {{"fit", "exact"}, {"tolerance", "3 mm"}}));
    EXPECT_LT(*one.piece().chance_apart, *one.piece().chance_outside);
    EXPECT_FALSE(cut_one(plain_line).piece().chance_apart);
}

TEST(Pairs, BelongToABoat) {
    EXPECT_EQ(cut_lines({leg, with(leg, {{"boat", "Cat 2"}, {"length", "5 m"}})}).counts.refused,
              0U);
}

TEST(Wholes, CountTheirRowsOnceAndLeaveNoOtherEnd) {
    const Line loop = with(plain_line, {{"end_a", "endless-loop"}, {"end_b", ""}});
    const auto one = cut_one(loop);
    const Piece& piece = one.piece();
    EXPECT_EQ(piece.line->ends.closing, LineEnd::a);
    EXPECT_FALSE(piece.check);
    for (const LedgerRow& entry : piece.ledger) {
        const bool outside = entry.row.item >= Item::extra;
        EXPECT_TRUE(!entry.end || outside || *entry.end == LineEnd::a);
    }
    const auto fault = refuse_one(with(loop, {{"end_b", "buried-eye"}}));
    EXPECT_EQ(fault.code, Code::cannot_be_both);
    EXPECT_EQ(fault.field, "end_b");
}

TEST(Wholes, MarksHoldFromEitherCutEnd) {
    const auto one = cut_one(with(plain_line, {{"end_a", "endless-loop"}}));
    const Piece& piece = one.piece();
    std::vector<Nanometres> from_a;
    std::vector<Nanometres> from_b;
    for (const PieceMark& mark : piece.marks) {
        if (mark.name != MarkName::tail_end) {
            (mark.end == LineEnd::a ? from_a : from_b)
                .push_back(mark.from_end - (mark.end == LineEnd::a ? 0 : piece.outside(mark.end)));
        }
    }
    EXPECT_FALSE(from_a.empty());
    EXPECT_EQ(from_a, from_b);
}

TEST(Person, RulesAreShownByName) {
    const auto one = cut_one(with(plain_line, {{"carries_person", "yes"}}));
    const auto& rules = one.piece().line->person.rules;
    // 29 CFR 1926.502(d)(9): 5,000 lb. 29 CFR 1926.104(d): 5,400 lb. Cordage Institute, quoted:
    // 12-15. A pound-force is 4.4482216152605 N.
    std::vector<double> asked;
    for (const PersonRule& rule : rules) {
        asked.push_back(rule.strength ? rule.strength->si() : rule.factor.value_or(0.0));
    }
    std::ranges::sort(asked);
    ASSERT_EQ(asked.size(), 3U);
    EXPECT_DOUBLE_EQ(asked[0], 13.5);
    EXPECT_NEAR(asked[1], 22241.108, 1e-3);
    EXPECT_NEAR(asked[2], 24020.397, 1e-3);
    EXPECT_TRUE(cut_one(plain_line).piece().line->person.rules.empty());
}

} // namespace
} // namespace libsplice::testing
