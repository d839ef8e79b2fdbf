// The linear programme over patterns, and the same in whole numbers.
#pragma once

#include <atomic>
#include <chrono>
#include <cstddef>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace libsplice {

/// One coefficient of a column.
struct Coefficient {
    int row = 0;
    double value = 0.0;
};

inline constexpr double unbounded = std::numeric_limits<double>::max();

/// Rows with limits, columns from 0 upwards, a cost to be made small. Each master is a model of
/// its own: threads may work on different ones.
class Master {
  public:
    explicit Master(std::size_t rows);
    ~Master();
    Master(const Master&) = delete;
    Master& operator=(const Master&) = delete;

    void set_row(std::size_t row, double lowest, double highest);
    void add_column(double cost, std::span<const Coefficient> coefficients);
    void set_highest(std::size_t column, double highest);

    /// Solves the linear programme from where the last one ended; false if it has no solution or
    /// numbers fail.
    [[nodiscard]] bool solve();
    [[nodiscard]] double value() const;
    [[nodiscard]] std::span<const double> row_prices() const;
    [[nodiscard]] std::span<const double> column_values() const;

    /// What a search in whole numbers starts from and when it ends.
    struct WholeSearch {
        /// So many columns, the first ones, are whole; the others may be any number.
        std::size_t whole_columns = std::numeric_limits<std::size_t>::max();
        double under = unbounded; ///< only a cost under this counts
        double enough = 0.0;      ///< a cost down to this ends the search
        int most_nodes = 1000;
        std::optional<std::chrono::steady_clock::time_point> deadline = {};
        const std::atomic<bool>* stop = nullptr;
    };
    /// What a search in whole numbers found.
    struct Whole {
        std::optional<std::vector<double>> values; ///< the cheapest, by column
        double cost = 0.0;                         ///< of these
        double bound = -unbounded; ///< nothing costs less, or less than what was searched under
        bool ended = false;        ///< no limit stopped the search
    };
    [[nodiscard]] Whole solve_whole(const WholeSearch& search) const;

  private:
    struct Model;
    std::unique_ptr<Model> model_;
};

} // namespace libsplice
