// Numbers with their units, their spread and their source.
#include "libsplice/catalogue/read_figure.h"

#include "libsplice/base/text.h"
#include "libsplice/mechanics/chance/spread.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace libsplice {

namespace {

using Units = std::span<const FigureUnit>;

/// A share of a length, a strength or a pull.
bool is_share(FigureId id) {
    switch (id) {
    case FigureId::setting:
    case FigureId::throat_share:
    case FigureId::blunt_loss:
    case FigureId::retained:
    case FigureId::sleeve_loss:
    case FigureId::shrinkage:
    case FigureId::bend_1:
    case FigureId::bend_2:
    case FigureId::bend_4:
    case FigureId::bend_6:
    case FigureId::bend_10:
    case FigureId::bend_15:
    case FigureId::bend_30:
    case FigureId::bend_40:
    case FigureId::slip:
    case FigureId::working_share:
    case FigureId::core_share:
    case FigureId::first_stretch:
    case FigureId::slack:
    case FigureId::milk_out:
    case FigureId::stretch:
    case FigureId::stretch_spread:
    case FigureId::elastic_from:
    case FigureId::elastic_up_to:
    case FigureId::elastic_limit:
    case FigureId::elastic_loss:
    case FigureId::tape_share:
        return true;
    default:
        return false;
    }
}

/// The units that a figure can be printed in: a length that is used as a share would be nonsense.
Units units_of(FigureId id) {
    static constexpr std::array lengths{FigureUnit::diameters, FigureUnit::mm, FigureUnit::cm,
                                        FigureUnit::m,         FigureUnit::in, FigureUnit::ft};
    static constexpr std::array reaches{FigureUnit::diameters, FigureUnit::mm, FigureUnit::cm,
                                        FigureUnit::m,         FigureUnit::in, FigureUnit::ft,
                                        FigureUnit::picks};
    static constexpr std::array counts{FigureUnit::none};
    static constexpr std::array diameter_counts{FigureUnit::diameters, FigureUnit::none};
    static constexpr std::array picks{FigureUnit::picks};
    static constexpr std::array angles{FigureUnit::degrees};
    static constexpr std::array forces{FigureUnit::newtons, FigureUnit::lbf};
    if (is_share(id)) {
        static constexpr std::array shares{FigureUnit::percent, FigureUnit::none};
        return shares;
    }
    switch (id) {
    case FigureId::exit:
        return reaches;
    case FigureId::braid_constant:
    case FigureId::packing:
    case FigureId::self_friction:
    case FigureId::strands:
    case FigureId::tucks:
    case FigureId::minimum_tucks:
    case FigureId::set:
    case FigureId::turns:
    case FigureId::half_hitches:
    case FigureId::friction:
    case FigureId::eye_pins:
    case FigureId::advised_eye_pins:
    case FigureId::tucks_single:
    case FigureId::tucks_half:
    case FigureId::crowns:
    case FigureId::strand_crowns:
    case FigureId::clips:
    case FigureId::design_factor:
        return counts;
    case FigureId::eye_diameters:
        return diameter_counts;
    case FigureId::picks_per_tuck:
        return picks;
    case FigureId::throat_limit:
    case FigureId::braid_angle:
        return angles;
    case FigureId::minimum_strength:
        return forces;
    default:
        return lengths;
    }
}

std::string listed_units(Units units) {
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
    const Units allowed = units_of(id);
    const auto unit = read_figure_unit(text);
    if (!unit || std::ranges::find(allowed, *unit) == allowed.end()) {
        push_fault(context, Code::table_value_wrong, node == nullptr ? table : *node, "unit",
                   (text.empty() ? "a unit is missing" : '"' + text + "\" is no unit") + " for \"" +
                       std::string(name_of(id)) + "\"; it takes " + listed_units(allowed));
        return std::nullopt;
    }
    return unit;
}

/// `11 1/2`, `3/8`, `12`.
std::optional<double> read_mixed_number(std::string_view text) {
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        const auto whole = read_number(text);
        return whole ? std::optional(*whole) : std::nullopt;
    }
    const auto blank = text.substr(0, slash).find(' ');
    const bool mixed = blank != std::string_view::npos;
    constexpr std::int64_t largest = 1'000'000;
    const auto whole =
        mixed ? read_count(text.substr(0, blank), 0, largest) : Result<std::int64_t>(0);
    const auto above = read_count(
        mixed ? text.substr(blank + 1, slash - blank - 1) : text.substr(0, slash), 0, largest);
    const auto below = read_count(text.substr(slash + 1), 1, largest);
    if (!whole || !above || !below) {
        return std::nullopt;
    }
    return static_cast<double>(*whole) + static_cast<double>(*above) / static_cast<double>(*below);
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
    const auto number = node->is_number()         ? std::optional(node->number())
                        : node->text() != nullptr ? read_mixed_number(trimmed(*node->text()))
                                                  : std::nullopt;
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
    return number;
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
    return figure;
}

} // namespace libsplice
