// Columns for missing pieces come first, then those for pieces had loose, then the pool's patterns.
#include "libsplice/reel/solver/patterns/pattern_programme.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

/// What a missing piece costs in the programme, against the dearest stock.
constexpr double dearest_piece = 1000.0;

} // namespace

PatternQuestion whole_question(const StockProblem& problem, const Goals& value) {
    PatternQuestion question{everything(problem), {}, value};
    question.stocks.highest = question.remaining.stocks;
    return question;
}

std::int64_t room_for(const Remaining& remaining, const Column& column) {
    std::int64_t times = remaining.stocks[column.stock];
    for (const Take& take : column.takes) {
        times = std::min(times, remaining.items[take.item] / take.count);
    }
    return times;
}

std::vector<double> stocks_used(const StockProblem& problem, const ColumnPool& pool,
                                const PatternAnswer& answer) {
    std::vector<double> used(problem.stocks.size(), 0.0);
    for (std::size_t c = 0; c < answer.times.size(); ++c) {
        used[pool.columns()[c].stock] += answer.times[c];
    }
    return used;
}

PatternProgramme::PatternProgramme(const StockProblem& problem, const ColumnPool& pool,
                                   const GoalUnits& units)
    : problem_(problem),
      pool_(pool),
      units_(units),
      master_(problem.items.size() + problem.stocks.size() + units.goal) {
    add_item_columns();
    add_new_columns();
}

std::size_t PatternProgramme::stock_row(std::size_t stock) const {
    return problem_.items.size() + stock;
}

std::size_t PatternProgramme::goal_row(std::size_t goal) const {
    return problem_.items.size() + problem_.stocks.size() + goal;
}

void PatternProgramme::add_item_columns() {
    const std::size_t items = problem_.items.size();
    for (std::size_t i = 0; i < items; ++i) {
        const Coefficient own{static_cast<int>(i), 1.0};
        master_.add_column(dearest_piece, std::span(&own, 1));
    }
    for (std::size_t i = 0; i < items; ++i) {
        const Goals loose = problem_.items[i].loose.value_or(Goals{});
        std::vector<Coefficient> coefficients{{static_cast<int>(i), 1.0}};
        for (std::size_t g = 0; g < units_.goal; ++g) {
            coefficients.push_back({static_cast<int>(goal_row(g)), units_.scaled(loose[g], g)});
        }
        master_.add_column(units_.scaled(loose[units_.goal]), coefficients);
        master_.set_highest(items + i, problem_.items[i].loose ? unbounded : 0.0);
    }
}

void PatternProgramme::add_new_columns() {
    std::vector<Coefficient> coefficients;
    for (; added_ < pool_.columns().size(); ++added_) {
        const Column& column = pool_.columns()[added_];
        coefficients.clear();
        for (const Take& take : column.takes) {
            coefficients.push_back({static_cast<int>(take.item), static_cast<double>(take.count)});
        }
        coefficients.push_back({static_cast<int>(stock_row(column.stock)), 1.0});
        for (std::size_t g = 0; g < units_.goal; ++g) {
            coefficients.push_back(
                {static_cast<int>(goal_row(g)), units_.scaled(column.price[g], g)});
        }
        master_.add_column(units_.scaled(column.price[units_.goal]), coefficients);
    }
}

void PatternProgramme::ask(const PatternQuestion& question) {
    const std::size_t items = problem_.items.size();
    for (std::size_t i = 0; i < items; ++i) {
        const auto count = static_cast<double>(question.remaining.items[i]);
        master_.set_row(i, count, units_.counts_waste ? count : unbounded);
    }
    for (std::size_t s = 0; s < problem_.stocks.size(); ++s) {
        const std::int64_t highest = question.stocks.highest[s];
        master_.set_row(stock_row(s),
                        question.stocks.lowest.empty()
                            ? -unbounded
                            : static_cast<double>(question.stocks.lowest[s]),
                        highest < no_limit ? static_cast<double>(highest) : unbounded);
    }
    for (std::size_t g = 0; g < units_.goal; ++g) {
        master_.set_row(goal_row(g), -unbounded, units_.scaled(question.room[g], g));
    }
    for (std::size_t c = 0; c < added_; ++c) {
        const bool fits = room_for(question.remaining, pool_.columns()[c]) > 0;
        master_.set_highest(2 * items + c, fits ? unbounded : 0.0);
    }
}

PatternAnswer PatternProgramme::answer(double cost, std::span<const double> values) const {
    const std::size_t items = problem_.items.size();
    const auto part = [&](std::size_t from, std::size_t count) {
        const auto cut = values.subspan(from, count);
        return std::vector<double>(cut.begin(), cut.end());
    };
    return {cost, part(0, items), part(items, items), part(2 * items, values.size() - 2 * items)};
}

std::optional<PatternAnswer> PatternProgramme::solve() {
    if (!master_.solve()) {
        return std::nullopt;
    }
    return answer(master_.value(), master_.column_values());
}

std::optional<PatternAnswer> PatternProgramme::solve_whole(const Master::WholeSearch& search) {
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        master_.set_highest(i, 0.0);
    }
    const auto whole = master_.solve_whole(search);
    for (std::size_t i = 0; i < problem_.items.size(); ++i) {
        master_.set_highest(i, unbounded);
    }
    return whole.values ? std::optional(answer(whole.cost, *whole.values)) : std::nullopt;
}

Amount PatternProgramme::price_of_item(std::size_t item) const {
    return std::llround(master_.row_prices()[item] * static_cast<double>(units_.whole()));
}

Amount PatternProgramme::price_of_stock(std::size_t stock) const {
    return std::llround(master_.row_prices()[stock_row(stock)] *
                        static_cast<double>(units_.whole()));
}

Goals PatternProgramme::weights() const {
    Goals weights{};
    weights[units_.goal] = units_.scale;
    for (std::size_t g = 0; g < units_.goal; ++g) {
        const double price = -master_.row_prices()[goal_row(g)];
        const double unit =
            static_cast<double>(units_.whole()) / static_cast<double>(units_.highest[g]);
        weights[g] = std::max<Amount>(0, std::llround(price * unit));
    }
    return weights;
}

} // namespace libsplice
