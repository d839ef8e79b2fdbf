// Numbers with their units, their spread and their source.
#include "libsplice/catalogue/reading/read_figure.h"

#include "libsplice/base/text.h"
#include "libsplice/mechanics/chance/spread.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace libsplice {

namespace {

using Units = std::span<const FigureUnit>;

std::string listed_figure_units(Units units) {
    std::vector<std::string> quoted;
    for (const FigureUnit unit : units) {
        quoted.push_back(unit == FigureUnit::none ? "no unit"
                                                  : '"' + std::string(name_of(unit)) + '"');
    }
    return listed(std::vector<std::string_view>(quoted.begin(), quoted.end()));
}

std::optional<FigureUnit> read_unit(TableContext& context, FigureId id, const Node& table) {
    const Node* node = table.find("unit");
    const std::string text = optional_text(context, table, "unit");
    if (node != nullptr && text.empty()) {
        return std::nullopt;
    }
    const Units allowed = units_of(declaration_of(id).sort);
    const auto unit = read_figure_unit(text);
    if (!unit || std::ranges::find(allowed, *unit) == allowed.end()) {
        push_fault(context, Code::table_value_wrong, node == nullptr ? table : *node, "unit",
                   (text.empty() ? "a unit is missing" : '"' + text + "\" is no unit") + " for \"" +
                       std::string(name_of(id)) + "\"; it takes " + listed_figure_units(allowed));
        return std::nullopt;
    }
    return unit;
}

struct Spread {
    double sd = 0.0;
    SpreadOrigin origin = SpreadOrigin::none;
    std::optional<double> low = std::nullopt; ///< limits that are printed
    std::optional<double> high = std::nullopt;
};

/// The limits that go with a spread, unless they are printed.
void set_limits(Figure& figure, const Spread& spread) {
    const double half_width = spread.sd * std::numbers::sqrt3;
    figure.low = spread.low.value_or(std::max(0.0, figure.value - half_width));
    figure.high = spread.high.value_or(figure.value + half_width);
}

std::optional<SpreadOrigin> read_origin(TableContext& context, const Node& table) {
    const std::string text = require_text(context, table, "spread");
    for (const auto origin :
         {SpreadOrigin::measured, SpreadOrigin::printed_range, SpreadOrigin::stated_guess}) {
        if (text == name_of(origin)) {
            return origin;
        }
    }
    if (!text.empty()) {
        push_fault(context, Code::table_value_wrong, *table.find("spread"), "spread",
                   '"' + text +
                       "\" is no origin of a spread; it is one of measured, printed range and "
                       "stated guess");
    }
    return std::nullopt;
}

/// The value and its spread as a record gives them: `low` and `high`, or a value with `sd` or
/// `plus_minus`, or a value alone.
class FigureValueReader {
  public:
    FigureValueReader(TableContext& context, const Node& table)
        : context_(context), table_(table) {}

    bool read(double& value, Spread& spread) {
        return (has("low") || has("high") ? read_range(value, spread)
                                          : read_value(value, spread)) &&
               read_spread_origin(spread);
    }

  private:
    [[nodiscard]] bool has(std::string_view key) const { return table_.find(key) != nullptr; }

    bool read_number_to(double& number, std::string_view key) {
        const auto read = read_printed_number(context_, table_, key);
        number = read.value_or(0.0);
        return read.has_value();
    }

    bool refuse(std::string_view key, std::string text) {
        push_fault(context_, Code::table_value_wrong, *table_.find(key), std::string(key),
                   std::move(text));
        return false;
    }

    bool read_range(double& value, Spread& spread) {
        double low = 0.0;
        double high = 0.0;
        if (!read_number_to(low, "low") || !read_number_to(high, "high")) {
            return false;
        }
        value = (low + high) / 2.0;
        if (has("value") && !read_number_to(value, "value")) {
            return false;
        }
        if (has("sd") || has("plus_minus")) {
            return refuse(has("sd") ? "sd" : "plus_minus",
                          "\"low\" and \"high\" give the spread already; leave this out");
        }
        if (low >= high || value < low || value > high) {
            return refuse("low", "\"low\" must lie below \"high\", and the value between them");
        }
        spread.sd = rectangular_spread((high - low) / 2.0);
        spread.low = low;
        spread.high = high;
        return true;
    }

    bool read_value(double& value, Spread& spread) {
        if (!read_number_to(value, "value")) {
            return false;
        }
        if (has("sd") && has("plus_minus")) {
            return refuse("sd", "give \"sd\" or \"plus_minus\", not both");
        }
        if (has("plus_minus")) {
            double half_width = 0.0;
            if (!read_number_to(half_width, "plus_minus")) {
                return false;
            }
            spread.sd = rectangular_spread(half_width);
            return true;
        }
        return !has("sd") || read_number_to(spread.sd, "sd");
    }

    bool read_spread_origin(Spread& spread) {
        const bool has_spread = has("low") || has("sd") || has("plus_minus");
        if (!has_spread) {
            return !has("spread") ||
                   refuse("spread", "a spread is named but not given; add \"sd\", \"plus_minus\", "
                                    "or \"low\" and \"high\"");
        }
        const auto origin = read_origin(context_, table_);
        spread.origin = origin.value_or(SpreadOrigin::none);
        return origin.has_value();
    }

    TableContext& context_;
    const Node& table_;
};

} // namespace

std::optional<double> read_printed_number(TableContext& context, const Node& table,
                                          std::string_view key) {
    const Node* node = table.find(key);
    if (node == nullptr) {
        push_fault(context, Code::table_key_missing, table, std::string(key),
                   '"' + std::string(key) + "\" is missing; give it as a number");
        return std::nullopt;
    }
    const auto number = node->is_number() ? Result<double>(node->number())
                                          : read_mixed_number(node->text() != nullptr
                                                                  ? std::string_view(*node->text())
                                                                  : std::string_view());
    if (!number || !std::isfinite(*number)) {
        push_fault(context, Code::table_value_wrong, *node, std::string(key),
                   '"' + std::string(key) + "\" must be a number, or a fraction like \"11 1/2\"");
        return std::nullopt;
    }
    if (*number < 0.0) {
        push_fault(context, Code::table_value_wrong, *node, std::string(key),
                   '"' + std::string(key) + "\" must not be negative");
        return std::nullopt;
    }
    return *number;
}

std::optional<Figure> read_figure(TableContext& context, FigureId id, const Node& table,
                                  std::optional<CitationId> inherited, std::string_view besides) {
    static constexpr std::array<std::string_view, 10> own_keys{
        "value",  "unit",   "sd",      "low",        "high",
        "spread", "source", "locator", "plus_minus", "status"};
    std::vector<std::string_view> keys(own_keys.begin(), own_keys.end());
    if (!besides.empty()) {
        keys.push_back(besides);
    }
    if (table.table() == nullptr) {
        push_fault(context, Code::table_value_wrong, table, std::string(name_of(id)),
                   '"' + std::string(name_of(id)) +
                       "\" must be a figure like { value = 72, unit = \"D\", source = ... }");
        return std::nullopt;
    }
    check_keys(context, table, keys);
    const auto unit = read_unit(context, id, table);
    const auto source = read_citation(context, table, inherited);
    Figure figure;
    Spread spread;
    if (!FigureValueReader(context, table).read(figure.value, spread) || !unit || !source) {
        return std::nullopt;
    }
    figure.unit = *unit;
    figure.source = *source;
    figure.sd = spread.sd;
    figure.origin = spread.origin;
    set_limits(figure, spread);
    if (figure.high > highest_of(id, *unit)) {
        push_fault(context, Code::table_value_wrong, table, std::string(name_of(id)),
                   '"' + std::string(name_of(id)) + "\" is out of range; it may be up to " +
                       show_number(highest_of(id, *unit), 3) + ' ' + std::string(name_of(*unit)));
        return std::nullopt;
    }
    return figure;
}

} // namespace libsplice
