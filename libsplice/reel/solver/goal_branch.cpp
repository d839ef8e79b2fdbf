// Branching on how many of each stock are used. A pattern's price does not change by it, so that
// the bound of each branch is worked out as that of the whole is.
#include "libsplice/reel/solver/goal_search.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace libsplice {

namespace {

/// A part of all plans, and a bound on them.
struct Branch {
    StockLimits limits;
    Amount bound = 0;
};

/// Takes the branch with the lowest bound, of equals the one that was added last.
Branch take_lowest(std::vector<Branch>& branches) {
    auto lowest = branches.begin();
    for (auto at = branches.begin(); at != branches.end(); ++at) {
        if (at->bound <= lowest->bound) {
            lowest = at;
        }
    }
    Branch branch = std::move(*lowest);
    branches.erase(lowest);
    return branch;
}

/// The stock whose number is farthest from whole.
std::optional<std::size_t> most_broken(const std::vector<double>& used) {
    std::optional<std::size_t> most;
    double farthest = 1e-5;
    for (std::size_t s = 0; s < used.size(); ++s) {
        const double off = std::abs(used[s] - std::round(used[s]));
        if (off > farthest) {
            farthest = off;
            most = s;
        }
    }
    return most;
}

} // namespace

void GoalSearch::branch(int most_branches) {
    constexpr int rounds_each = 300;
    const Remaining all = everything(problem_);
    const StockLimits whole = stock_limits_;
    std::vector<Branch> open{{whole, best_.bound}};
    Amount undecided = std::numeric_limits<Amount>::max(); // the lowest bound that cannot rise
    for (int i = 0; i < most_branches && !open.empty() && !limits_.reached(); ++i) {
        Branch here = take_lowest(open);
        best_.bound = std::max(best_.bound, std::min(here.bound, undecided));
        if (std::min(here.bound, undecided) >= best_.value[0]) {
            open.push_back(std::move(here));
            break;
        }
        stock_limits_ = here.limits;
        bound_ = here.bound;
        open_all();
        set_rows(all, {});
        set_stock_rows(here.limits);
        generate(all, rounds_each, true);
        here.bound = bound_;
        std::vector<double> used;
        std::optional<std::size_t> broken;
        if (!proved() && master_.solve()) {
            used = stocks_used();
            broken = most_broken(used);
            dive(here.limits.highest);
        }
        if (bound_ >= best_.value[0]) {
            continue;
        }
        if (!broken) {
            undecided = std::min(undecided, bound_);
            continue;
        }
        Branch fewer = here;
        fewer.limits.highest[*broken] = static_cast<std::int64_t>(std::floor(used[*broken]));
        Branch more = std::move(here);
        more.limits.lowest[*broken] = static_cast<std::int64_t>(std::floor(used[*broken])) + 1;
        open.push_back(std::move(more));
        open.push_back(std::move(fewer));
    }
    Amount lowest = std::min(undecided, best_.value[0]);
    for (const Branch& branch : open) {
        lowest = std::min(lowest, branch.bound);
    }
    best_.bound = std::max(best_.bound, lowest);
    bound_ = best_.bound;
    stock_limits_ = whole;
}

} // namespace libsplice
