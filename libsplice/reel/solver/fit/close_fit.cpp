// Fills a stock by a subset sum that is as near to full as it can be, and does so again and
// again.
#include "libsplice/reel/solver/fit/close_fit.h"

#include <algorithm>
#include <array>
#include <functional>
#include <limits>
#include <numeric>

namespace libsplice {

namespace {

/// Tables are no wider than this: finer lengths are rounded, up for pieces and down for stock.
constexpr Amount widest_table = 500'000;
/// How much is done in a turn once only the last few stocks are left.
constexpr std::int64_t most_work_on_last = 100'000'000;
/// Of so many stocks each is filled in several ways.
constexpr std::int64_t last_few = 8;
constexpr unsigned passed_over_one_in = 8;
/// What else it takes to fill a stock, by item, against a word of a table.
constexpr std::int64_t work_of_an_item = 100;
constexpr std::int64_t work_of_a_try = 1'000;

Amount rounded_up(Amount length, Amount unit) {
    return (length + unit - 1) / unit;
}

} // namespace

CloseFit::CloseFit(const StockProblem& problem, const SearchLimits& limits)
    : problem_(problem), limits_(limits) {
    Amount unit = 0;
    for (const StockItem& item : problem.items) {
        unit = std::gcd(unit, item.length + problem.cut_loss);
    }
    for (const Stock& stock : problem.stocks) {
        unit = std::max(unit, rounded_up(stock.length + problem.cut_loss, widest_table));
    }
    for (const StockItem& item : problem.items) {
        sizes_.push_back(rounded_up(item.length + problem.cut_loss, unit));
    }
    for (const Stock& stock : problem.stocks) {
        capacities_.push_back((stock.length + problem.cut_loss) / unit);
    }
    order_.resize(problem.items.size());
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::ranges::stable_sort(order_, std::greater(),
                             [&](std::size_t item) { return sizes_[item]; });
    stock_order_.resize(problem.stocks.size());
    std::iota(stock_order_.begin(), stock_order_.end(), std::size_t{0});
    std::ranges::stable_sort(stock_order_, {}, [&](std::size_t s) { return capacities_[s]; });
}

void CloseFit::start(const std::vector<std::int64_t>& stocks) {
    rest_ = everything(problem_);
    rest_.stocks = stocks;
    cuts_.clear();
    pieces_left_ = std::accumulate(rest_.items.begin(), rest_.items.end(), std::int64_t{0});
    stocks_left_ = 0;
    spare_ = 0;
    for (std::size_t s = 0; s < stocks.size(); ++s) {
        rest_.stocks[s] = std::min(stocks[s], pieces_left_);
        stocks_left_ += rest_.stocks[s];
        spare_ += rest_.stocks[s] * capacities_[s];
    }
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
        spare_ -= rest_.items[i] * sizes_[i];
    }
}

/// How many ways the next stock is filled in: by how many there are left.
int CloseFit::tries() const {
    constexpr std::array<int, 9> by_stocks_left{0, 1, 3, 12, 6, 4, 3, 2, 2};
    constexpr int before = 4; // until one fits, and never another
    return static_cast<std::size_t>(stocks_left_) < by_stocks_left.size()
               ? by_stocks_left[static_cast<std::size_t>(stocks_left_)]
               : before;
}

std::optional<StockPlan> CloseFit::turn(const std::vector<std::int64_t>& stocks,
                                        std::minstd_rand& random) {
    start(stocks);
    by_stock_ = random() % 2 == 0;
    std::int64_t work_on_last = 0;
    int tries_left = tries();
    while (pieces_left_ > 0) {
        if (limits_.reached() || work_on_last > most_work_on_last) {
            return std::nullopt;
        }
        if (tries_left > 0) {
            --tries_left;
            const bool few = stocks_left_ <= last_few;
            const std::int64_t before = work_;
            const bool done = cut_one(random);
            work_on_last += few ? work_ - before : 0;
            if (done) {
                cuts_.back().tries_left = few ? tries_left : 0;
                tries_left = tries();
            }
            continue;
        }
        if (cuts_.empty()) {
            return std::nullopt;
        }
        place(cuts_.back().pattern, -1);
        spare_ += cuts_.back().waste;
        tries_left = cuts_.back().tries_left;
        cuts_.pop_back();
    }
    return plan();
}

/// The longest piece of all, or that some stock holds, drawn by lot: else the short stock would be
/// left to the end, with nothing but short pieces.
std::optional<std::size_t> CloseFit::next_piece(std::minstd_rand& random) const {
    Amount longest = std::numeric_limits<Amount>::max();
    if (by_stock_ && stocks_left_ > last_few) {
        auto lot = static_cast<std::int64_t>(random()) % stocks_left_;
        std::size_t stock = 0;
        while (lot >= rest_.stocks[stock]) {
            lot -= rest_.stocks[stock];
            ++stock;
        }
        longest = capacities_[stock];
    }
    const auto piece = std::ranges::find_if(
        order_, [&](std::size_t item) { return rest_.items[item] > 0 && sizes_[item] <= longest; });
    return piece == order_.end() ? std::nullopt : std::optional(*piece);
}

/// Cuts the next piece from the stock that it wastes least of; false if that is more than there is
/// to spare.
bool CloseFit::cut_one(std::minstd_rand& random) {
    constexpr int most_stocks = 8;
    work_ += work_of_a_try;
    const auto piece = next_piece(random);
    std::optional<Pattern> best;
    Amount least = spare_ + 1;
    int stocks = 0;
    for (const std::size_t stock : stock_order_) {
        if (!piece || !holds(stock, *piece) || random() % passed_over_one_in == 0) {
            continue;
        }
        Pattern pattern = fill(stock, *piece, random);
        const Amount waste = waste_of(pattern);
        if (waste < least) {
            best = std::move(pattern);
            least = waste;
        }
        if (least == 0 || ++stocks == most_stocks) {
            break;
        }
    }
    if (!best) {
        return false;
    }
    place(*best, 1);
    spare_ -= least;
    cuts_.push_back({*std::move(best), least, 0});
    return true;
}

bool CloseFit::holds(std::size_t stock, std::size_t item) const {
    return rest_.stocks[stock] > 0 && capacities_[stock] >= sizes_[item] &&
           problem_.items[item].may_come_from(stock);
}

/// The fullest filling that has the piece in it. Before the last two stocks other pieces
/// are passed over now and then.
Pattern CloseFit::fill(std::size_t stock, std::size_t piece, std::minstd_rand& random) {
    offered_.clear();
    for (const std::size_t item : order_) {
        const bool passed_over = stocks_left_ > 2 && random() % passed_over_one_in == 0;
        const bool offered = !passed_over && problem_.items[item].may_come_from(stock);
        const std::int64_t left = rest_.items[item] - (item == piece ? 1 : 0);
        offered_.push_back({sizes_[item], offered ? left : 0});
    }
    sums_.make(offered_, capacities_[stock] - sizes_[piece]);
    work_ += sums_.work() + work_of_an_item * static_cast<std::int64_t>(order_.size());
    const auto counts = sums_.pieces_of(sums_.largest(), random);
    Pattern pattern{stock, {}, rest_.stocks[stock]};
    for (std::size_t k = 0; k < order_.size(); ++k) {
        const std::size_t item = order_[k];
        const std::int32_t count = counts[k] + (item == piece ? 1 : 0);
        if (count > 0) {
            pattern.takes.push_back({static_cast<std::uint32_t>(item), count});
            pattern.times = std::min(pattern.times, rest_.items[item] / count);
        }
    }
    pattern.times = std::max<std::int64_t>(1, pattern.times / 2); // the rest in another way
    std::ranges::sort(pattern.takes, {}, &Take::item);
    return pattern;
}

/// Capacity that is not used, of all that are cut so.
Amount CloseFit::waste_of(const Pattern& pattern) const {
    Amount waste = capacities_[pattern.stock];
    for (const Take& take : pattern.takes) {
        waste -= sizes_[take.item] * take.count;
    }
    return waste * pattern.times;
}

/// Cuts a pattern, or with a sign of -1 takes it back.
void CloseFit::place(const Pattern& pattern, std::int64_t sign) {
    rest_.stocks[pattern.stock] -= sign * pattern.times;
    stocks_left_ -= sign * pattern.times;
    for (const Take& take : pattern.takes) {
        rest_.items[take.item] -= sign * take.count * pattern.times;
        pieces_left_ -= sign * take.count * pattern.times;
    }
}

StockPlan CloseFit::plan() const {
    StockPlan plan;
    plan.loose.assign(problem_.items.size(), 0);
    plan.unplaced.assign(problem_.items.size(), 0);
    for (const Cut& cut : cuts_) {
        plan.patterns.push_back(cut.pattern);
    }
    plan.value = price_of(problem_, plan);
    return plan;
}

} // namespace libsplice
