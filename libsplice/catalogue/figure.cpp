// The units of figures, and a figure as a length.
#include "libsplice/catalogue/figure.h"

#include "libsplice/units/unit.h"

#include <gsl/assert>

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 12> unit_words{"",  "%",  "D",  "picks", "mm", "cm",
                                                      "m", "in", "ft", "deg",   "N",  "lbf"};
static_assert(unit_words.size() == static_cast<std::size_t>(FigureUnit::lbf) + 1);

/// Longer than any rope that a figure speaks of, in metres and in rope diameters.
constexpr double longest_figure = 1000.0;
constexpr double most_rope_diameters = 10'000.0;
constexpr double most_counted = 10'000.0;
constexpr double widest_angle = 180.0;
constexpr double greatest_force = 1e9;

/// The unit of length that a figure's unit is, if it is one.
const Unit* length_unit(FigureUnit unit) {
    return find_unit(length_units, name_of(unit));
}

} // namespace

std::span<const FigureUnit> units_of(FigureSort sort) {
    using enum FigureUnit;
    static constexpr std::array lengths{diameters, mm, cm, m, in, ft, picks};
    static constexpr std::array shares{percent, none};
    static constexpr std::array forces{newtons, lbf};
    static constexpr std::array diameter_counts{diameters, none};
    static constexpr std::array angles{degrees};
    static constexpr std::array only_picks{picks};
    switch (sort) {
    case FigureSort::length:
        return std::span(lengths).first(lengths.size() - 1);
    case FigureSort::reach:
        return lengths;
    case FigureSort::share:
        return shares;
    case FigureSort::count:
        return std::span(shares).last(1);
    case FigureSort::diameters:
        return diameter_counts;
    case FigureSort::picks:
        return only_picks;
    case FigureSort::angle:
        return angles;
    case FigureSort::force:
        return forces;
    }
    Expects(false && "every sort of figure has its units");
    return {};
}

double highest_of(FigureId id, FigureUnit unit) {
    if (const Unit* length = length_unit(unit)) {
        return longest_figure / length->si;
    }
    switch (unit) {
    case FigureUnit::percent:
        return 100.0 * declaration_of(id).highest_share;
    case FigureUnit::diameters:
    case FigureUnit::picks:
        return most_rope_diameters;
    case FigureUnit::degrees:
        return widest_angle;
    case FigureUnit::newtons:
    case FigureUnit::lbf:
        return greatest_force;
    default:
        return declaration_of(id).sort == FigureSort::share ? declaration_of(id).highest_share
                                                            : most_counted;
    }
}

std::optional<FigureId> read_figure_name(std::string_view name) {
    const auto found = std::ranges::find(figure_table, name, &FigureDeclaration::word);
    return found == figure_table.end() ? std::nullopt : std::optional(found->id);
}

std::optional<FigureUnit> read_figure_unit(std::string_view name) {
    const auto found = std::ranges::find(unit_words, name);
    return found == unit_words.end()
               ? std::nullopt
               : std::optional(static_cast<FigureUnit>(found - unit_words.begin()));
}

std::string_view name_of(FigureUnit unit) {
    return unit_words.at(static_cast<std::size_t>(unit));
}

std::string_view name_of(SpreadOrigin origin) {
    constexpr auto origins =
        std::to_array<std::string_view>({"none", "measured", "printed range", "stated guess"});
    return origins[static_cast<std::size_t>(origin)];
}

Length Figure::scale(Length diameter) const {
    if (unit == FigureUnit::diameters) {
        return diameter;
    }
    const Unit* length = length_unit(unit);
    Expects(length != nullptr && "a figure that is no length is used as one");
    return metres(length->si);
}

} // namespace libsplice
