// Tries every stock for every piece, and keeps the cheapest plan.
#include "tests/reel/brute_force.h"

#include <algorithm>

namespace libsplice::testing {

namespace {

/// A stock that is cut into: the pieces in it, and the rope they take with a cut behind each.
struct Opened {
    std::size_t stock = 0;
    Nanometres pieces = 0;
    std::int64_t count = 0;
};

class BruteForce {
  public:
    explicit BruteForce(const StockProblem& problem) : problem_(problem) {
        for (std::size_t i = 0; i < problem.items.size(); ++i) {
            pieces_.insert(pieces_.end(), static_cast<std::size_t>(problem.items[i].count), i);
        }
    }

    std::optional<Goals> run() {
        place(0);
        return best_;
    }

  private:
    void place(std::size_t at) {
        if (at == pieces_.size()) {
            const Goals value = worth();
            best_ = !best_ || value < *best_ ? value : *best_;
            return;
        }
        const StockItem& item = problem_.items[pieces_[at]];
        for (std::size_t k = 0; k < opened_.size(); ++k) {
            if (fits(opened_[k], pieces_[at])) {
                opened_[k].pieces += item.length;
                ++opened_[k].count;
                place(at + 1);
                opened_[k].pieces -= item.length;
                --opened_[k].count;
            }
        }
        for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
            const auto used = std::ranges::count(opened_, s, &Opened::stock);
            if (used < problem_.stocks[s].available && fits({s, 0, 0}, pieces_[at])) {
                opened_.push_back({s, item.length, 1});
                place(at + 1);
                opened_.pop_back();
            }
        }
        if (item.loose) {
            loose_.push_back(*item.loose);
            place(at + 1);
            loose_.pop_back();
        }
    }

    /// n pieces need n - 1 cuts between them.
    [[nodiscard]] bool fits(const Opened& opened, std::size_t item) const {
        const bool allowed =
            problem_.items[item].allowed.empty() || problem_.items[item].allowed[opened.stock];
        return allowed &&
               opened.pieces + problem_.items[item].length + opened.count * problem_.cut_loss <=
                   problem_.stocks[opened.stock].length;
    }

    [[nodiscard]] Goals worth() const {
        Goals sum{};
        for (const Goals& loose : loose_) {
            for (std::size_t g = 0; g < most_goals; ++g) {
                sum[g] += loose[g];
            }
        }
        for (const Opened& opened : opened_) {
            const Stock& stock = problem_.stocks[opened.stock];
            const Nanometres rest =
                stock.length - opened.pieces - (opened.count - 1) * problem_.cut_loss;
            const Nanometres left = rest > problem_.cut_loss ? rest - problem_.cut_loss : 0;
            for (std::size_t g = 0; g < most_goals; ++g) {
                sum[g] += stock.each[g] + (stock.waste[g] && left < stock.usable ? left : 0);
            }
        }
        return sum;
    }

    const StockProblem& problem_;
    std::vector<std::size_t> pieces_; ///< the item of each
    std::vector<Opened> opened_;
    std::vector<Goals> loose_;
    std::optional<Goals> best_;
};

} // namespace

std::optional<Goals> best_goals(const StockProblem& problem) {
    return BruteForce(problem).run();
}

} // namespace libsplice::testing
