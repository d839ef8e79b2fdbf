// The published instances and those that were made with a known optimum. What takes its time to
// prove is in the table of docs/performance.md (tests/bench/bench_reel_table.cpp).
#include "libsplice/reel/solver/first_fit.h"

#include "tests/reel/instances.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace libsplice::testing {

namespace {

/// The pieces of the plan are those that were asked for, and no stock is used more than it is
/// there.
void expect_a_plan(const StockProblem& problem, const StockPlan& plan) {
    std::vector<std::int64_t> items(problem.items.size(), 0);
    std::vector<std::int64_t> stocks(problem.stocks.size(), 0);
    for (const Pattern& pattern : plan.patterns) {
        stocks[pattern.stock] += pattern.times;
        Nanometres rope = -problem.cut_loss;
        for (const Take& take : pattern.takes) {
            items[take.item] += take.count * pattern.times;
            rope += (problem.items[take.item].length + problem.cut_loss) * take.count;
        }
        EXPECT_LE(rope, problem.stocks[pattern.stock].length);
    }
    for (std::size_t i = 0; i < items.size(); ++i) {
        EXPECT_EQ(items[i] + plan.loose[i] + plan.unplaced[i], problem.items[i].count);
    }
    for (std::size_t s = 0; s < stocks.size(); ++s) {
        EXPECT_LE(stocks[s], problem.stocks[s].available);
    }
}

/// A few seconds: with what is never timed, a value that may be off the optimum but not below it.
void expect_no_lie(const Instance& instance, const StockPlan& plan) {
    SCOPED_TRACE(instance.name);
    expect_a_plan(instance.problem, plan);
    if (!instance.optimum) {
        EXPECT_FALSE(plan.places_all());
        return;
    }
    EXPECT_LE(plan.bound, *instance.optimum);
    if (plan.places_all()) {
        EXPECT_GE(plan.value[0], *instance.optimum);
        EXPECT_EQ(plan.proved, plan.value[0] == plan.bound);
    }
}

StockPlan solve_for(const StockProblem& problem, std::chrono::milliseconds time) {
    SearchLimits limits;
    limits.deadline = std::chrono::steady_clock::now() + time;
    return solve(problem, limits);
}

TEST(Published, OrLibraryHasAllItsInstances) {
    EXPECT_EQ(or_library(LIBSPLICE_INSTANCES_DIR).size(), 103U);
    EXPECT_EQ(planted(LIBSPLICE_PLANTED_DIR).size(), 22U);
}

// Of every family some are solved to the end, without a limit: they end by themselves.
TEST(Published, UniformInstancesAreProved) {
    const auto instances = or_library(LIBSPLICE_INSTANCES_DIR);
    for (std::size_t i = 0; i < 80; i += 4) {
        const StockPlan plan = solve(instances[i].problem, {});
        SCOPED_TRACE(instances[i].name);
        expect_a_plan(instances[i].problem, plan);
        EXPECT_EQ(plan.value[0], instances[i].optimum);
        EXPECT_EQ(plan.bound, instances[i].optimum);
        EXPECT_TRUE(plan.proved);
    }
}

TEST(Published, TripletsAreProved) {
    for (const auto& instance : or_library(LIBSPLICE_INSTANCES_DIR)) {
        if (instance.name == "t120_00" || instance.name == "t120_05" ||
            instance.name == "t120_07") {
            const StockPlan plan = solve(instance.problem, {});
            expect_a_plan(instance.problem, plan);
            EXPECT_EQ(plan.value[0], instance.optimum) << instance.name;
            EXPECT_TRUE(plan.proved) << instance.name;
        }
    }
}

TEST(Published, OnesThatCannotBeDoneAreSeenAtOnce) {
    for (const auto& instance : planted(LIBSPLICE_PLANTED_DIR)) {
        if (!instance.optimum) {
            const StockPlan plan = solve(instance.problem, {});
            expect_no_lie(instance, plan);
            EXPECT_TRUE(plan.proved) << instance.name;
        }
    }
}

// However short the time, what comes out is a plan, and no bound is over the optimum.
TEST(Published, NothingIsEverProvedWrongly) {
    using std::chrono::milliseconds;
    for (const auto& instance : or_library(LIBSPLICE_INSTANCES_DIR)) {
        expect_no_lie(instance, solve_for(instance.problem, milliseconds(20)));
    }
    for (const auto& instance : planted(LIBSPLICE_PLANTED_DIR)) {
        expect_no_lie(instance, solve_for(instance.problem, milliseconds(400)));
    }
}

TEST(Published, TheSamePlanComesOutAgain) {
    const auto instances = or_library(LIBSPLICE_INSTANCES_DIR);
    const StockPlan first = solve(instances[2].problem, {});
    const StockPlan second = solve(instances[2].problem, {});
    ASSERT_EQ(first.patterns.size(), second.patterns.size());
    for (std::size_t i = 0; i < first.patterns.size(); ++i) {
        EXPECT_EQ(first.patterns[i].takes, second.patterns[i].takes);
        EXPECT_EQ(first.patterns[i].times, second.patterns[i].times);
    }
}

} // namespace

} // namespace libsplice::testing
