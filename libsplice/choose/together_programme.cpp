// A column for each option, for each reel, for metres, for each sort that is used and for what a
// sort is known to cost beyond its reels; a row for each line, sort, option and known cost.
#include "libsplice/choose/together_programme.h"

#include <algorithm>
#include <utility>

namespace libsplice {

namespace {

/// Fewer sorts break ties: all of them together are less than half a cent.
constexpr double cost_of_all_sorts = 0.004;
/// Whole columns of metres and money.
constexpr double millimetre = 0.001;
constexpr double cent = 0.01;

class Builder {
  public:
    explicit Builder(const TogetherProgramme& asked)
        : asked_(asked),
          lengths_(asked.lines),
          uses_(lengths_ + asked.sorts.size()),
          known_(uses_ + asked.options.size()),
          master_(known_ + asked.known.size()) {
        set_rows();
        for (std::size_t o = 0; o < asked.options.size(); ++o) {
            add_option(o);
        }
        for (std::size_t s = 0; s < asked.sorts.size(); ++s) {
            add_sort(s);
        }
    }

    [[nodiscard]] Master& master() { return master_; }
    /// What sorts cost that are only counted.
    [[nodiscard]] double cost_of_a_sort() const {
        return cost_of_all_sorts /
               static_cast<double>(std::max<std::size_t>(1, asked_.sorts.size()));
    }

  private:
    void set_rows() {
        for (std::size_t l = 0; l < asked_.lines; ++l) {
            const bool served = std::ranges::any_of(
                asked_.options, [&](const RopeOption& option) { return option.line == l; });
            master_.set_row(l, served ? 1.0 : 0.0, served ? 1.0 : 0.0);
        }
        for (std::size_t row = lengths_; row < known_; ++row) {
            master_.set_row(row, 0.0, unbounded);
        }
        // The sort's cost is no less than the known one where all of its options are taken.
        for (std::size_t k = 0; k < asked_.known.size(); ++k) {
            const auto all = static_cast<double>(asked_.known[k].options.size());
            master_.set_row(known_ + k, asked_.known[k].cost * (1.0 - all), unbounded);
        }
    }

    void put(std::size_t row, double value) { column_.push_back({static_cast<int>(row), value}); }

    void add_column(double cost, std::optional<double> highest = std::nullopt) {
        master_.add_column(cost, column_);
        if (highest) {
            master_.set_highest(columns_, *highest);
        }
        column_.clear();
        ++columns_;
    }

    void add_option(std::size_t index) {
        const RopeOption& option = asked_.options[index];
        put(option.line, 1.0);
        put(lengths_ + option.sort, -option.metres);
        put(uses_ + index, -1.0);
        for (std::size_t k = 0; k < asked_.known.size(); ++k) {
            const auto& options = asked_.known[k].options;
            if (std::ranges::find(options, index) != options.end()) {
                put(known_ + k, -asked_.known[k].cost);
            }
        }
        add_column(0.0, 1.0);
    }

    /// A column that brings metres of a sort for money.
    void add_rope(std::size_t sort, double metres, double price, std::optional<double> highest) {
        put(lengths_ + sort, metres);
        put_paid(sort, price);
        add_column(price, highest);
    }

    void put_paid(std::size_t sort, double price) {
        for (std::size_t k = 0; k < asked_.known.size(); ++k) {
            if (asked_.known[k].sort == sort && price > 0.0) {
                put(known_ + k, price);
            }
        }
    }

    void add_sort(std::size_t sort) {
        const RopeSort& rope = asked_.sorts[sort];
        for (const SortReel& reel : rope.reels) {
            add_rope(sort, reel.metres, reel.price,
                     reel.count ? std::optional(static_cast<double>(*reel.count)) : std::nullopt);
        }
        add_rope(sort, millimetre, millimetre * rope.per_metre, std::nullopt);
        for (std::size_t o = 0; o < asked_.options.size(); ++o) {
            if (asked_.options[o].sort == sort) {
                put(uses_ + o, 1.0);
            }
        }
        add_column(cost_of_a_sort(), 1.0);
        put_paid(sort, cent);
        add_column(cent);
    }

    const TogetherProgramme& asked_;
    std::size_t lengths_; ///< first row of the sorts' lengths; those of the lines are before it
    std::size_t uses_;    ///< first row of the options' uses
    std::size_t known_;   ///< first row of the known costs
    Master master_;
    std::vector<Coefficient> column_;
    std::size_t columns_ = 0;
};

} // namespace

RelaxedChoice solve(const TogetherProgramme& programme, double under, const SearchLimits& limits) {
    Builder builder(programme);
    RelaxedChoice choice;
    if (builder.master().solve()) {
        choice.bound = std::min(builder.master().value(), under) - cost_of_all_sorts;
    }
    Master::WholeSearch search;
    search.under = under + cost_of_all_sorts;
    search.most_nodes = 20'000;
    search.deadline = limits.deadline;
    search.stop = limits.stop;
    const Master::Whole whole = builder.master().solve_whole(search);
    if (whole.ended) {
        choice.bound = whole.values ? whole.cost - cost_of_all_sorts : under;
    }
    if (whole.values) {
        choice.options.emplace();
        for (std::size_t o = 0; o < programme.options.size(); ++o) {
            if ((*whole.values)[o] > 0.5) {
                choice.options->push_back(o);
            }
        }
    }
    return choice;
}

} // namespace libsplice
