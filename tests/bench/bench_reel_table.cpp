// The table of docs/performance.md: every instance with bound, best, seconds and first-fit.
//
//     bench_reel_table [SECONDS [NAME... | FOLDER/]]
//
// FOLDER holds other planted instances instead, as tests/reel/planted.py writes them.
#include "libsplice/reel/solver/first_fit.h"

#include "tests/reel/instances.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <string>
#include <vector>

namespace {

using namespace libsplice;

double processor_seconds() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

/// Rope cut into, less what came back in one piece: what first-fit and we differ in.
double metres_of(const StockProblem& problem, const StockPlan& plan) {
    Nanometres sum = 0;
    for (const Pattern& pattern : plan.patterns) {
        sum += problem.stocks[pattern.stock].length * pattern.times;
    }
    return from_nanometres(sum).si();
}

void print_row(const testing::Instance& instance, double seconds) {
    SearchLimits limits;
    limits.deadline = std::chrono::steady_clock::now() +
                      std::chrono::milliseconds(static_cast<int>(seconds * 1000.0));
    const double start = processor_seconds();
    const StockPlan plan = solve(instance.problem, limits);
    const double used = processor_seconds() - start;
    const StockPlan fit =
        first_fit(instance.problem, everything(instance.problem), FirstFitRule::least_per_length);
    const bool whole =
        std::ranges::count(plan.unplaced, 0) == static_cast<std::ptrdiff_t>(plan.unplaced.size());
    const bool fit_whole =
        std::ranges::count(fit.unplaced, 0) == static_cast<std::ptrdiff_t>(fit.unplaced.size());
    const double gap = whole && plan.value[0] > 0
                           ? 100.0 * static_cast<double>(plan.value[0] - plan.bound) /
                                 static_cast<double>(plan.value[0])
                           : 0.0;
    std::printf(
        "| %s | %lld | %lld | %lld | %.3f | %s | %.2f | %s | %.1f |\n", instance.name.c_str(),
        static_cast<long long>(instance.optimum.value_or(-1)), static_cast<long long>(plan.bound),
        whole ? static_cast<long long>(plan.value[0]) : -1LL, gap, plan.proved ? "yes" : "no", used,
        fit_whole ? std::to_string(fit.value[0]).c_str() : "-",
        metres_of(instance.problem, fit) - metres_of(instance.problem, plan));
    static_cast<void>(std::fflush(stdout));
}

} // namespace

int main(int argument_count, char** arguments) {
    const std::vector<std::string> words(arguments + 1, arguments + argument_count);
    const double seconds = words.empty() ? 10.0 : std::stod(words[0]);
    const bool others = words.size() == 2 && words[1].ends_with('/');
    std::vector<testing::Instance> instances =
        testing::planted(others ? words[1] : LIBSPLICE_PLANTED_DIR);
    if (!others) {
        auto published = testing::or_library(LIBSPLICE_INSTANCES_DIR);
        instances.insert(instances.begin(), published.begin(), published.end());
    }
    std::printf("| instance | optimum | bound | best | gap %% | proved | processor s | "
                "first-fit | metres saved |\n|---|---|---|---|---|---|---|---|---|\n");
    for (const testing::Instance& instance : instances) {
        if (words.size() < 2 || others ||
            std::find(words.begin() + 1, words.end(), instance.name) != words.end()) {
            print_row(instance, seconds);
        }
    }
    return 0;
}
