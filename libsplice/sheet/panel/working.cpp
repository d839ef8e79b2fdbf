#include "libsplice/sheet/panel/working.h"

#include "libsplice/cut/spread.h"
#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_route.h"
#include "libsplice/sheet/words/ledger_group.h"
#include "libsplice/sheet/words/words.h"

#include <array>
#include <cmath>
#include <numbers>
#include <optional>

namespace libsplice {

namespace {

/// A row's formula with its numbers, and what it comes to.
struct Formula {
    std::string formula;
    std::string numbers; ///< `, T = 300.0 mm` for each letter
    double length = 0.0; ///< metres; of one side, where the kind counts both
};

/// What the formulas of one row draw on.
struct Terms {
    const Piece& piece;
    const LedgerRow& entry;
    Nanometres sum_before = 0; ///< of the rows above
    UnitSystem units{};

    [[nodiscard]] const BoundLine& plan() const { return *piece.line; }
    [[nodiscard]] double length() const { return from_nanometres(entry.row.length).si(); }
    [[nodiscard]] double before() const { return from_nanometres(sum_before).si(); }
    /// Whether the row is one of a kind that accounts for both sides of the line. Spare stands with
    /// an end, but is the line's.
    [[nodiscard]] bool both_sides() const {
        return plan().ends.closing && entry.end == plan().ends.closing &&
               entry.row.item != Item::spare;
    }
    [[nodiscard]] std::optional<double> value(ValueName name) const {
        return entry.end ? plan().end(*entry.end).allowance->find(name) : std::nullopt;
    }
    [[nodiscard]] std::string fine(double length) const { return show_fine(Length(length), units); }
    /// `, T = 12.0 mm`.
    [[nodiscard]] std::string number(std::string_view letter, double length) const {
        return ", " + std::string(letter) + " = " + fine(length);
    }
};

std::string percent(double share) {
    return show_number(share * 100.0, 4) + " %";
}

/// On rope of diameter D, where nothing more particular is known of the row.
std::string in_diameters(const Terms& terms) {
    if (terms.entry.row.source == cited_job) {
        return terms.both_sides() ? "as the job says, both sides together" : "as the job says";
    }
    const Length rope = terms.plan().rope->counting_diameter();
    return show_number(Length(terms.length()) / rope, 4) +
           " D, D = " + show_fine(rope, terms.units);
}

std::optional<Formula> formula_of_stretch(const Terms& terms) {
    const double marking = terms.plan().states.marking_strain;
    const double working = terms.plan().states.working_strain;
    return Formula{
        "L ((1 + m)/(1 + w) - 1)",
        terms.number("L", terms.before()) + " between the bearing points, m = " + percent(marking) +
            " at the marking tension, w = " + percent(working) +
            (terms.plan().states.elastic ? " where its way is shortest" : " at the line's tension"),
        terms.before() * ((1.0 + marking) / (1.0 + working) - 1.0)};
}

/// Rope that will be longer by a share once it is in use is cut shorter, and the other way round.
std::optional<Formula> formula_of_share(const Terms& terms, const std::optional<LengthShare>& of,
                                        std::string_view sign) {
    if (!of) {
        return std::nullopt;
    }
    const double change = sign == "+" ? of->share : -of->share;
    return Formula{"L (1/(1 " + std::string(sign) + " s) - 1)",
                   terms.number("L", terms.before()) + ", s = " + percent(of->share),
                   terms.before() * (1.0 / (1.0 + change) - 1.0)};
}

/// What the rope was bent round when its eye was shaped: a ring's groove, nothing in an eye that
/// was pressed flat, else the pin.
std::optional<double> shaped_on(const Terms& terms) {
    for (const ValueName name : {ValueName::shaped_on_m, ValueName::groove_m, ValueName::pin_m}) {
        if (const auto diameter = terms.value(name)) {
            return diameter;
        }
    }
    return std::nullopt;
}

std::optional<Formula> formula_of_eye(const Terms& terms) {
    const auto inside = terms.value(ValueName::eye_m);
    const auto rope = terms.value(ValueName::eye_rope_m);
    const auto angle = terms.value(ValueName::throat_angle_deg);
    const auto bent_round = shaped_on(terms);
    if (!inside || !rope || !angle || !bent_round) {
        return std::nullopt;
    }
    const auto legs = terms.value(ValueName::legs_m);
    const double h = *inside - *bent_round / 2.0 - legs.value_or(0.0);
    const double radius = (*bent_round + *rope) / 2.0;
    const double straight = std::sqrt(h * h + *rope * *rope / 4.0 - radius * radius);
    const double round = radius * (std::numbers::pi + *angle * std::numbers::pi / 180.0);
    return Formula{std::string("R (pi + 2b) + 2t") + (legs ? " + 2l" : ""),
                   terms.number("R", radius) + ", half of pin and rope together" +
                       terms.number("h", h) + " from the pin's centre to where the legs meet" +
                       terms.number("w", *rope / 2.0) +
                       " off the axis, q = sqrt(h^2 + w^2), t = sqrt(q^2 - R^2), "
                       "b = asin(R/q) - atan(w/h), 2b = " +
                       show_number(*angle, 3) + " degrees" +
                       (legs ? terms.number("l", *legs) + " side by side" : ""),
                   round + 2.0 * straight + 2.0 * legs.value_or(0.0)};
}

/// What lies within the finished length is taken off.
std::optional<Formula> formula_of_bearing(const Terms& terms, std::string_view what) {
    const auto moved = terms.value(ValueName::bearing_m);
    const auto inside = moved ? moved : terms.value(ValueName::eye_m);
    if (!inside) {
        return std::nullopt;
    }
    return Formula{"-E",
                   terms.number("E", *inside) + ", " +
                       (moved ? "from the bearing point to the throat" : std::string(what)) +
                       ", which lies within the finished length",
                   -*inside};
}

std::optional<Formula> formula_of_take_up(const Terms& terms) {
    const auto tail = terms.value(ValueName::tail_m);
    const auto taper = terms.value(ValueName::taper_m);
    const auto constant = terms.value(ValueName::braid_constant);
    if (!tail || !taper || !constant) {
        return std::nullopt;
    }
    const double share = std::sqrt(1.0 - *constant);
    return Formula{"(T - P)/sqrt(1 - K) + 2P/(1 + sqrt(1 - K)) - T",
                   terms.number("T", *tail) + terms.number("P", *taper) +
                       ", K = " + show_number(*constant, 6),
                   (*tail - *taper) / share + 2.0 * *taper / (1.0 + share) - *tail};
}

std::optional<Formula> formula_of_setting(const Terms& terms) {
    const auto buried = terms.value(ValueName::bury_m);
    const auto setting = terms.value(ValueName::setting_m);
    if (!buried || !setting || !(*buried > 0.0)) {
        return std::nullopt;
    }
    return Formula{"-s T", ", s = " + percent(-*setting / *buried) + terms.number("T", *buried),
                   *setting};
}

std::optional<Formula> formula_of_spare(const Terms& terms) {
    if (terms.plan().fit.spare) {
        return std::nullopt;
    }
    const double spread = combined_spread(terms.piece.ledger);
    return Formula{"z s",
                   ", z = " + show_number(terms.plan().fit.spare_quantile, 6) +
                       terms.number("s", spread) +
                       ": spreads of one group added, the groups combined as the root of their "
                       "squares",
                   terms.plan().fit.spare_quantile * spread};
}

std::optional<Formula> formula_of(const Terms& terms) {
    const BoundLine& plan = terms.plan();
    switch (terms.entry.row.item) {
    case Item::stretch:
        return formula_of_stretch(terms);
    case Item::slack:
        return formula_of_share(terms, plan.states.slack, "+");
    case Item::first_stretch:
        return formula_of_share(terms, plan.states.first_stretch, "+");
    case Item::shrinkage:
        return formula_of_share(terms, plan.states.shrinkage, "-");
    case Item::eye_legs:
    case Item::loop_legs:
        return formula_of_eye(terms);
    case Item::throat_to_bearing:
        return formula_of_bearing(terms, "the eye");
    case Item::knot_to_bearing:
        return formula_of_bearing(terms, "the loop");
    case Item::take_up:
        return formula_of_take_up(terms);
    case Item::setting:
        return formula_of_setting(terms);
    case Item::spare:
        return formula_of_spare(terms);
    default:
        return std::nullopt;
    }
}

/// The formula, if it gives the row's length.
std::optional<std::string> as_formula(const Terms& terms) {
    constexpr double close = 0.05e-3;
    const auto found = formula_of(terms);
    const double sides = terms.both_sides() ? 2.0 : 1.0;
    if (!found || !(std::abs(sides * found->length - terms.length()) <= close)) {
        return std::nullopt;
    }
    return (terms.both_sides() ? "2 x (" + found->formula + ")" : found->formula) + found->numbers;
}

std::string in_words(const Terms& terms) {
    const BoundLine& plan = terms.plan();
    switch (terms.entry.row.item) {
    case Item::finished_length:
        return plan.route ? route_working(*plan.route, terms.units) : "as the job says";
    case Item::extra:
    case Item::wear:
        return "as the job says";
    case Item::fitting:
        return "less the fitting, from the rope's bearing point to the fitting's working point";
    case Item::pin_centre:
        return "half the pin, which the job measures to";
    case Item::soft_eye:
        return "no length; a spread, for the pin that the eye will hang on is not known";
    case Item::cutting_loss:
        return "lost in the cut itself";
    case Item::milk_out:
        return "the greater of " + percent(plan.states.milk_out->share) + " of the length and " +
               terms.fine(from_nanometres(plan.states.least_milk_out).si());
    case Item::rounding:
        return "up to the next whole " + terms.fine(from_nanometres(plan.fit.step).si());
    default:
        return in_diameters(terms);
    }
}

constexpr std::size_t indent = 8;

} // namespace

std::string working_of(const Piece& piece, std::size_t at, UnitSystem units) {
    Nanometres before = 0;
    for (std::size_t i = 0; i < at; ++i) {
        before += piece.ledger[i].row.length;
    }
    const Terms terms{piece, piece.ledger[at], before, units};
    return as_formula(terms).value_or(in_words(terms));
}

void write_working(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    constexpr std::array columns{PageColumn{34}, PageColumn{4}, PageColumn{18, true},
                                 PageColumn{18, true}};
    page.head(columns, std::array<std::string, 4>{"item", "end", "length", "sum"});
    Nanometres sum = 0;
    for (std::size_t i = 0; i < piece.ledger.size(); ++i) {
        const auto& [row, end] = piece.ledger[i];
        sum += row.length;
        page.row(columns, std::array<std::string, 4>{std::string(citing.names().of(row.item)),
                                                     std::string(end ? letter_of(*end) : "-"),
                                                     show_fine(from_nanometres(row.length), units),
                                                     show_fine(from_nanometres(sum), units)});
        page.row_note("= " + working_of(piece, i, units), indent, 2);
        if (row.sd > 0.0) {
            page.row_note("sd " + show_fine(Length(row.sd), units) + ", " +
                              std::string(name_of(row.origin)) +
                              ", errs with: " + group_of(piece.ledger, i, "line", citing.names()),
                          indent, 2);
        }
        page.row_note("source: " + std::string(citing.text(row.source)), indent, 2);
    }
}

} // namespace libsplice
