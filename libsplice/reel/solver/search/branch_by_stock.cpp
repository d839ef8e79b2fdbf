// A pattern's price does not change by a limit on its stock, so the bound of each branch is worked
// out as that of the whole is.
#include "libsplice/reel/solver/search/branch_by_stock.h"

#include <gsl/assert>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

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

class Branches {
  public:
    Branches(const DiveTools& tools, BestPlan& best, std::minstd_rand& random)
        : tools_(tools), best_(best), random_(random) {
        Branch whole{whole_question(tools.problem, {}).stocks, best.bound()};
        whole.limits.lowest.assign(tools.problem.stocks.size(), 0);
        open_.push_back(std::move(whole));
    }

    void run(int most_branches) {
        for (int i = 0; i < most_branches && !open_.empty() && !tools_.limits.reached(); ++i) {
            Branch here = take_lowest(open_);
            const Amount lowest = std::min(here.bound, undecided_);
            best_.raise_bound(std::min(lowest, best_.value()));
            if (lowest >= best_.value()) {
                open_.push_back(std::move(here));
                break;
            }
            look_into(std::move(here));
        }
        Amount lowest = std::min(undecided_, best_.value());
        for (const Branch& branch : open_) {
            lowest = std::min(lowest, branch.bound);
        }
        best_.raise_bound(lowest);
    }

  private:
    /// Raises the branch's bound, dives in it, and splits it where it may still hold something.
    void look_into(Branch here) {
        constexpr int rounds_each = 300;
        PatternQuestion question = whole_question(tools_.problem, best_.plan().value);
        question.stocks = here.limits;
        here.bound = tools_.generation.raise(question, here.bound, best_, rounds_each);
        std::optional<std::size_t> broken;
        std::vector<double> used;
        if (!best_.is_met_by(here.bound)) {
            if (const auto answer = tools_.programme.solve()) {
                used = stocks_used(tools_.problem, tools_.pool, *answer);
                broken = most_broken(used);
                if (auto plan = dive(tools_, here.limits.highest, false, random_)) {
                    best_.offer(*std::move(plan));
                }
            }
        }
        if (best_.is_met_by(here.bound)) {
            return;
        }
        if (broken) {
            split(std::move(here), *broken, used[*broken]);
        } else {
            undecided_ = std::min(undecided_, here.bound);
        }
    }

    void split(Branch here, std::size_t stock, double used) {
        const auto whole = static_cast<std::int64_t>(std::floor(used));
        Branch fewer = here;
        fewer.limits.highest[stock] = whole;
        Branch more = std::move(here);
        more.limits.lowest[stock] = whole + 1;
        open_.push_back(std::move(more));
        open_.push_back(std::move(fewer));
    }

    const DiveTools& tools_;
    BestPlan& best_;
    std::minstd_rand& random_;
    std::vector<Branch> open_;
    Amount undecided_ = std::numeric_limits<Amount>::max(); ///< the lowest bound that cannot rise
};

} // namespace

void branch_by_stock(const DiveTools& tools, BestPlan& best, int most_branches,
                     std::minstd_rand& random) {
    Expects(best.goal() == 0);
    Branches(tools, best, random).run(most_branches);
}

} // namespace libsplice
