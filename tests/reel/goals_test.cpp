// Goals in their order, against every plan there is.
#include "libsplice/reel/solver/first_fit.h"
#include "libsplice/reel/solver/patterns/column_pool.h"
#include "libsplice/reel/solver/search/goal_search.h"

#include "tests/reel/brute_force.h"

#include <gtest/gtest.h>

#include <random>

namespace libsplice::testing {

namespace {

/// Up to seven pieces of three lengths, two or three sorts of stock, every sort of goal.
StockProblem tiny_problem(std::uint32_t seed) {
    std::minstd_rand random(seed);
    const auto number = [&](int lowest, int highest) {
        return static_cast<Amount>(lowest) +
               static_cast<Amount>(random() % static_cast<unsigned>(highest - lowest + 1));
    };
    StockProblem problem;
    problem.cut_loss = number(0, 2);
    problem.goals = 3;
    for (Amount s = 0; s < number(2, 3); ++s) {
        Stock stock{.length = number(9, 30), .available = number(1, 3)};
        stock.usable = number(1, 8);
        stock.each = {number(0, 6), number(0, 3), number(0, 1)};
        const auto waste = static_cast<std::size_t>(seed % 3);
        stock.waste[waste] = true;
        stock.each[waste] = 0;
        problem.stocks.push_back(stock);
    }
    problem.stocks.push_back(
        {.length = 31, .each = {9, 9, 1}, .waste = problem.stocks[0].waste, .usable = 4});
    for (Amount i = 0; i < 3; ++i) {
        problem.items.push_back(
            {number(3, 14) + 15 * (i % 2) * number(0, 1), number(1, 2), {}, {}});
    }
    if (seed % 5 == 0) {
        problem.items[0].loose = Goals{number(2, 9), number(0, 9), 0};
    }
    if (seed % 4 == 0) {
        problem.items[1].allowed.assign(problem.stocks.size(), true);
        problem.items[1].allowed[0] = false;
    }
    return problem;
}

class GoalsTrial : public ::testing::TestWithParam<std::uint32_t> {};

TEST_P(GoalsTrial, EveryGoalIsAsGoodAsCanBe) {
    const StockProblem problem = tiny_problem(GetParam());
    const auto best = best_goals(problem);
    ASSERT_TRUE(best);
    const StockPlan plan = solve(problem, {});
    EXPECT_EQ(plan.value, *best);
    EXPECT_EQ(price_of(problem, plan), *best);
    EXPECT_TRUE(plan.proved);
    EXPECT_EQ(plan.bound, plan.value[0]);
}

/// The search that large problems need, on the same problems: it may miss, but never lie.
TEST_P(GoalsTrial, TheBoundOfTheSearchIsNeverOverTheBest) {
    const StockProblem problem = tiny_problem(GetParam());
    const auto best = best_goals(problem);
    ASSERT_TRUE(best);
    StockPlan plan = first_fit(problem, everything(problem), FirstFitRule::least_per_piece);
    ColumnPool pool(problem);
    const SearchLimits limits;
    GoalSearch search(problem, pool, 0, plan, limits);
    search.run(3);
    EXPECT_LE(plan.bound, (*best)[0]);
    EXPECT_GE(plan.value[0], (*best)[0]);
    search.branch(300);
    EXPECT_LE(plan.bound, (*best)[0]);
    EXPECT_GE(plan.value[0], (*best)[0]);
}

INSTANTIATE_TEST_SUITE_P(Many, GoalsTrial, ::testing::Range(1U, 300U));

} // namespace

} // namespace libsplice::testing
