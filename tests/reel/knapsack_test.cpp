// The knapsack against every filling there is.
#include "libsplice/reel/solver/patterns/knapsack.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace libsplice::testing {

namespace {

Amount best_by_trying(const KnapsackTask& task, std::size_t at, Amount fill, Amount value) {
    if (at == task.items.size()) {
        return value - std::max<Amount>(0, task.slope * fill - task.most_from_slope);
    }
    Amount best = std::numeric_limits<Amount>::min();
    const KnapsackItem& item = task.items[at];
    for (std::int64_t k = 0; k <= item.most && fill + k * item.size <= task.capacity; ++k) {
        best = std::max(
            best, best_by_trying(task, at + 1, fill + k * item.size, value + k * item.profit));
    }
    return best;
}

void expect_counts_are_worth_it(const KnapsackTask& task, const Filling& filling) {
    Amount fill = 0;
    Amount value = 0;
    for (std::size_t i = 0; i < filling.counts.size(); ++i) {
        EXPECT_LE(filling.counts[i], task.items[i].most);
        fill += filling.counts[i] * task.items[i].size;
        value += filling.counts[i] * task.items[i].profit;
    }
    EXPECT_LE(fill, task.capacity);
    EXPECT_EQ(value - std::max<Amount>(0, task.slope * fill - task.most_from_slope), filling.value);
}

class KnapsackTrial : public ::testing::TestWithParam<std::uint32_t> {};

TEST_P(KnapsackTrial, TreeAndTableFindTheBestFilling) {
    std::minstd_rand random(GetParam());
    std::vector<KnapsackItem> items;
    for (std::size_t i = 0; i < 1 + random() % 6; ++i) {
        const auto profit = static_cast<Amount>(random() % 60) - 5;
        items.push_back({static_cast<Amount>(1 + random() % 30), profit,
                         static_cast<std::int64_t>(random() % 4)});
    }
    KnapsackTask task{items, static_cast<Amount>(random() % 100)};
    if (random() % 2 == 0) { // what a stock keeps of a slope, up to a little under its capacity
        task.slope = static_cast<Amount>(1 + random() % 3);
        task.most_from_slope = task.slope * std::max<Amount>(0, task.capacity - 2);
    }
    const Amount wanted = std::max<Amount>(0, best_by_trying(task, 0, 0, 0));
    KnapsackTable table;
    const Filling by_tree = fill_knapsack(task, table);
    EXPECT_EQ(by_tree.value, wanted);
    EXPECT_EQ(by_tree.at_most, wanted);
    expect_counts_are_worth_it(task, by_tree);
    table.make(items, task.capacity);
    const Filling by_table = table.best(task);
    EXPECT_EQ(by_table.value, wanted);
    expect_counts_are_worth_it(task, by_table);
}

INSTANTIATE_TEST_SUITE_P(Many, KnapsackTrial, ::testing::Range(1U, 400U));

TEST(Knapsack, ASearchCutShortStillBoundsTheBest) {
    std::vector<KnapsackItem> items;
    for (Amount i = 0; i < 30; ++i) { // all of one density but for a little
        items.push_back({1000 + 37 * i, 100'000 + 3701 * i, 3});
    }
    KnapsackTask task{items, 9'998};
    KnapsackTable table;
    const Amount best = fill_knapsack(task, table).value;
    task.most_steps = 1;
    task.exact = false;
    const Filling cut_short = fill_knapsack(task, table);
    EXPECT_LE(cut_short.value, best);
    EXPECT_GE(cut_short.at_most, best);
}

TEST(Knapsack, NothingIsFoundWhereNothingBeatsTheMark) {
    KnapsackTable table;
    const std::vector<KnapsackItem> items{{3, 5, 2}};
    const Filling filling = fill_knapsack({.items = items, .capacity = 7, .beat = 10}, table);
    EXPECT_TRUE(filling.counts.empty());
    EXPECT_EQ(filling.at_most, 10);
}

} // namespace

} // namespace libsplice::testing
