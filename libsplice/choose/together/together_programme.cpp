// A column for each option, each sort that is used, each reel, and then for metres and for what a
// sort is known to cost beyond them; a row for each unit, sort, option and known cost.
#include "libsplice/choose/together/together_programme.h"

#include "libsplice/reel/solver/patterns/master.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace libsplice {

namespace {

/// Fewer sorts break ties: all of them together are less than half a cent.
constexpr double cost_of_all_sorts = 0.004;

/// What an option weighs in a known cost: that of all, or one where no money is enough.
double weight_of(const KnownCost& known) {
    return std::isfinite(known.cost) ? known.cost : 1.0;
}

class Builder {
  public:
    explicit Builder(const TogetherProgramme& asked)
        : asked_(asked),
          lengths_(asked.units),
          uses_(lengths_ + asked.sorts.size()),
          known_(uses_ + asked.options.size()),
          sorts_(known_ + asked.known.size()),
          master_(sorts_ + 1),
          options_of_sort_(asked.sorts.size()),
          known_of_sort_(asked.sorts.size()) {
        for (std::size_t o = 0; o < asked.options.size(); ++o) {
            options_of_sort_[asked.options[o].sort].push_back(o);
        }
        for (std::size_t k = 0; k < asked.known.size(); ++k) {
            known_of_sort_[asked.known[k].sort].push_back(k);
        }
        set_rows();
        for (std::size_t o = 0; o < asked.options.size(); ++o) {
            add_option(o);
        }
        for (std::size_t s = 0; s < asked.sorts.size(); ++s) {
            add_use(s);
        }
        for (std::size_t s = 0; s < asked.sorts.size(); ++s) {
            add_reels(s);
        }
        whole_ = columns_;
        for (std::size_t s = 0; s < asked.sorts.size(); ++s) {
            add_metres(s);
        }
    }

    [[nodiscard]] Master& master() { return master_; }
    [[nodiscard]] std::size_t whole_columns() const { return whole_; }

  private:
    void set_rows() {
        for (std::size_t unit = 0; unit < asked_.units; ++unit) {
            master_.set_row(unit, 1.0, 1.0);
        }
        for (std::size_t row = lengths_; row < known_; ++row) {
            master_.set_row(row, 0.0, unbounded);
        }
        for (std::size_t k = 0; k < asked_.known.size(); ++k) {
            const auto all = static_cast<double>(asked_.known[k].options.size());
            master_.set_row(known_ + k, weight_of(asked_.known[k]) * (1.0 - all), unbounded);
        }
        const auto most = asked_.most_sorts.value_or(asked_.sorts.size());
        master_.set_row(sorts_, -unbounded, static_cast<double>(most));
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
        put(option.unit, 1.0);
        put(lengths_ + option.sort, -option.metres);
        put(uses_ + index, -1.0);
        for (const std::size_t k : known_of_sort_[option.sort]) {
            const KnownCost& known = asked_.known[k];
            if (std::ranges::binary_search(known.options, index)) {
                put(known_ + k, -weight_of(known));
            }
        }
        add_column(0.0, 1.0);
    }

    void add_use(std::size_t sort) {
        for (const std::size_t option : options_of_sort_[sort]) {
            put(uses_ + option, 1.0);
        }
        put(sorts_, 1.0);
        const auto sorts = static_cast<double>(asked_.sorts.size());
        add_column(cost_of_all_sorts / sorts, 1.0);
    }

    /// A column that brings metres of a sort for money.
    void add_rope(std::size_t sort, double metres, double price, std::optional<double> highest) {
        put(lengths_ + sort, metres);
        put_paid(sort, price);
        add_column(price, highest);
    }

    void put_paid(std::size_t sort, double price) {
        for (const std::size_t k : known_of_sort_[sort]) {
            if (price > 0.0 && std::isfinite(asked_.known[k].cost)) {
                put(known_ + k, price);
            }
        }
    }

    void add_reels(std::size_t sort) {
        for (const SortReel& reel : asked_.sorts[sort].reels) {
            add_rope(sort, reel.metres, reel.price,
                     reel.count ? std::optional(static_cast<double>(*reel.count)) : std::nullopt);
        }
    }

    void add_metres(std::size_t sort) {
        if (const auto& price = asked_.sorts[sort].per_metre) {
            add_rope(sort, 1.0, *price, std::nullopt);
        }
        put_paid(sort, 1.0);
        add_column(1.0);
    }

    const TogetherProgramme& asked_;
    std::size_t lengths_; ///< first row of the sorts' lengths; those of the units are before it
    std::size_t uses_;    ///< first row of the options' uses
    std::size_t known_;   ///< first row of the known costs
    std::size_t sorts_;   ///< the row that counts the sorts
    Master master_;
    std::vector<Coefficient> column_;
    std::size_t columns_ = 0;
    std::size_t whole_ = 0;
    std::vector<std::vector<std::size_t>> options_of_sort_;
    std::vector<std::vector<std::size_t>> known_of_sort_;
};

} // namespace

RelaxedChoice solve(const TogetherProgramme& programme, double under, const SearchLimits& limits) {
    Builder builder(programme);
    Master::WholeSearch search;
    search.whole_columns = builder.whole_columns();
    search.under = under;
    search.most_nodes = 20'000;
    search.deadline = limits.deadline;
    search.stop = limits.stop;
    const Master::Whole whole = builder.master().solve_whole(search);
    RelaxedChoice choice;
    const double found = whole.values ? whole.cost : under;
    choice.bound =
        std::max(0.0, std::min(whole.ended ? found : whole.bound, under)) - cost_of_all_sorts;
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
