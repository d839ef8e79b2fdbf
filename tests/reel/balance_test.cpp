// Plans of random jobs add up to the nanometre, whatever the objective.
#include "libsplice/reel/plan.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

namespace libsplice::testing {

namespace {

constexpr Nanometres tenth = 100'000; // a tenth of a millimetre

ReelQuestion random_question(std::uint32_t seed) {
    std::minstd_rand random(seed);
    const auto tenths = [&](unsigned lowest, unsigned highest) {
        return tenth * static_cast<Nanometres>(lowest + random() % (highest - lowest + 1));
    };
    ReelQuestion question;
    question.cut_loss = random() % 2 == 0 ? 0 : tenths(1, 100);
    question.objective = static_cast<Objective>(seed % 3);
    const std::vector<std::string> ropes{"a", "b", "c"};
    const std::vector<std::string> words{"", "", "red", "blue"};
    for (unsigned i = 0; i < 3 + random() % 20; ++i) {
        question.demands.push_back({.rope = ropes[random() % 3],
                                    .length = tenths(1'000, 120'000),
                                    .count = 1 + static_cast<std::int64_t>(random() % 6),
                                    .name = "line " + std::to_string(i),
                                    .boat = "boat",
                                    .lot = words[random() % 4],
                                    .colour = words[random() % 4],
                                    .pair = random() % 6 == 0 ? "pair" : ""});
    }
    for (unsigned i = 0; i < 4 + random() % 8; ++i) {
        const auto kind = static_cast<StockKind>(random() % 3);
        ReelStock stock{.id = "s" + std::to_string(i),
                        .rope = ropes[random() % 2],
                        .length = tenths(10'000, 400'000),
                        .count = 1 + static_cast<std::int64_t>(random() % 4),
                        .kind = kind,
                        .usable = tenths(0, 20'000),
                        .lot = words[random() % 4],
                        .colour = words[random() % 4],
                        .per_metre = static_cast<Money>(1'000'000 + random() % 3'000'000),
                        .per_reel = {}};
        if (kind == StockKind::order) {
            stock.count.reset();
            stock.least_count = 1 + static_cast<std::int64_t>(random() % 3);
            if (random() % 3 == 0) {
                stock.length.reset();
                stock.least_length = tenths(0, 100'000);
            }
        }
        question.stock.push_back(stock);
    }
    return question;
}

/// What the plan says, counted anew from its cuts.
void expect_balance(const ReelQuestion& question, const ReelPlan& plan) {
    std::vector<std::int64_t> placed(question.demands.size(), 0);
    std::map<std::string, Nanometres> in;
    std::map<std::string, Nanometres> out;
    for (const ReelCut& cut : plan.cuts) {
        const ReelStock& stock = plan.stock[cut.stock];
        Nanometres at = 0;
        for (const PlacedPiece& piece : cut.pieces) {
            const Demand& demand = question.demands[piece.demand];
            EXPECT_EQ(piece.at, at);
            EXPECT_EQ(demand.rope, stock.rope);
            EXPECT_TRUE(demand.colour.empty() || stock.colour.empty() ||
                        demand.colour == stock.colour);
            placed[piece.demand] += cut.times;
            out[stock.rope] += demand.length * cut.times;
            at += demand.length + question.cut_loss;
        }
        const Nanometres end = cut.pieces.empty() ? 0 : at - question.cut_loss;
        EXPECT_LE(end, cut.length);
        EXPECT_EQ(end + cut.left +
                      std::min(cut.pieces.empty() ? 0 : question.cut_loss, cut.length - end),
                  cut.length);
        EXPECT_EQ(cut.left_is == LeftIs::offcut, cut.left > 0 && cut.left >= stock.usable);
        in[stock.rope] += cut.length * cut.times;
        out[stock.rope] += (cut.cut_loss + cut.left) * cut.times;
    }
    EXPECT_EQ(in, out);
    for (const Unplaced& unplaced : plan.unplaced) {
        placed[unplaced.demand] += unplaced.count;
        EXPECT_FALSE(unplaced.fault.text.empty());
    }
    for (std::size_t i = 0; i < placed.size(); ++i) {
        EXPECT_EQ(placed[i], question.demands[i].count);
    }
    for (const RopeLedger& ledger : plan.ledger) {
        EXPECT_EQ(ledger.stock + ledger.ordered,
                  ledger.pieces + ledger.cut_loss + ledger.offcuts + ledger.waste);
    }
    EXPECT_LE(plan.quality.bound, plan.quality.value);
}

class BalanceTrial : public ::testing::TestWithParam<std::uint32_t> {};

TEST_P(BalanceTrial, RopeInIsRopeOut) {
    const ReelQuestion question = random_question(GetParam());
    SearchLimits limits;
    limits.deadline = std::chrono::steady_clock::now() + std::chrono::milliseconds(100);
    const ReelPlan plan = plan_reels(question, limits);
    expect_balance(question, plan);
    EXPECT_FALSE(check_balance(question, plan));
}

INSTANTIATE_TEST_SUITE_P(Many, BalanceTrial, ::testing::Range(1U, 120U));

TEST(Balance, APlanThatDoesNotAddUpIsAFault) {
    ReelQuestion question;
    question.demands.push_back({.rope = "a", .length = 5 * tenth, .count = 2, .name = "line"});
    ReelStock reel;
    reel.id = "r";
    reel.rope = "a";
    reel.length = 20 * tenth;
    reel.count = 1;
    question.stock.push_back(reel);
    ReelPlan plan = plan_reels(question, {});
    ASSERT_FALSE(check_balance(question, plan));
    plan.cuts[0].left += 1;
    EXPECT_EQ(check_balance(question, plan)->code, Code::rope_unbalanced);
    plan.cuts[0].left -= 1;
    plan.cuts[0].times = 2;
    EXPECT_EQ(check_balance(question, plan)->code, Code::rope_unbalanced);
}

} // namespace

} // namespace libsplice::testing
