#include "libsplice/sheet/working.h"

#include "libsplice/cut/spread.h"
#include "libsplice/sheet/ledger_group.h"
#include "libsplice/sheet/text_facts.h"
#include "libsplice/sheet/words.h"

#include <cmath>

namespace libsplice {

namespace {

/// What the formulas of one row draw on.
struct Terms {
    const Piece& piece;
    const LedgerRow& entry;
    Nanometres sum_before = 0; ///< of the rows above
    UnitSystem units{};

    [[nodiscard]] const LinePlan& plan() const { return *piece.plan; }
    [[nodiscard]] const Allowance& end() const { return *plan().end(*entry.end).allowance; }
    [[nodiscard]] double value(ValueName name) const { return end().find(name).value_or(0.0); }
    [[nodiscard]] std::string fine(double length) const { return show_fine(Length(length), units); }
    [[nodiscard]] std::string fine(Nanometres length) const {
        return show_fine(from_nanometres(length), units);
    }
    /// `name = 12.0 mm`.
    [[nodiscard]] std::string term(std::string_view letter, ValueName name) const {
        return std::string(letter) + " = " + fine(value(name));
    }
};

std::string percent(double share) {
    return show_number(share * 100.0, 4) + " %";
}

/// On rope of diameter D, where nothing more particular is known of the row.
std::string in_diameters(const Terms& terms) {
    const Length rope = terms.plan().rope->counting_diameter();
    const double count = from_nanometres(terms.entry.row.length) / rope;
    return show_number(count, 4) + " D, D = " + show_fine(rope, terms.units);
}

std::string working_of_stretch(const Terms& terms) {
    return "L ((1 + m)/(1 + w) - 1), L = " + terms.fine(terms.sum_before) +
           " between the bearing points, m = " + percent(terms.plan().marking_strain) +
           " at the marking pull, w = " + percent(terms.plan().working_strain) +
           " at the line's tension";
}

std::string working_of_share(const Terms& terms, const LengthShare& share) {
    return "L (1/(1 + s) - 1), L = " + terms.fine(terms.sum_before) +
           ", s = " + percent(share.share);
}

std::string working_of_eye(const Terms& terms) {
    const double pin = terms.value(ValueName::pin_m);
    const double throat = terms.value(ValueName::eye_m) - pin / 2.0;
    const double rope = terms.value(ValueName::eye_rope_m);
    return "R (pi + 2b) + 2t, R = (pin + rope)/2 = " + terms.fine((pin + rope) / 2.0) +
           ", throat to pin centre h = " + terms.fine(throat) +
           ", legs w = " + terms.fine(rope / 2.0) +
           " off the axis, q = sqrt(h^2 + w^2), t = sqrt(q^2 - R^2), "
           "b = asin(R/q) - atan(w/h), 2b = " +
           show_number(terms.value(ValueName::throat_angle_deg), 3) + " degrees";
}

std::string working_of_take_up(const Terms& terms) {
    return "(T - P)/sqrt(1 - K) + 2P/(1 + sqrt(1 - K)) - T, " + terms.term("T", ValueName::tail_m) +
           ", " + terms.term("P", ValueName::taper_m) +
           ", K = " + show_number(terms.value(ValueName::braid_constant), 6);
}

std::string working_of_setting(const Terms& terms) {
    const double share =
        -from_nanometres(terms.entry.row.length).si() / terms.value(ValueName::bury_m);
    return "-s T, s = " + percent(share) + ", " + terms.term("T", ValueName::bury_m);
}

std::string working_of_milk_out(const Terms& terms) {
    return "the greater of " + percent(terms.plan().milk_out->share) + " of the length and " +
           terms.fine(terms.plan().least_milk_out);
}

std::string working_of_spare(const Terms& terms) {
    if (terms.plan().spare) {
        return "as the job says";
    }
    return "z s, z = " + show_number(terms.plan().spare_quantile, 6) +
           ", s = " + terms.fine(combined_spread(terms.piece.ledger)) +
           ": spreads of one group added, the groups combined as the root of their squares";
}

std::string working(const Terms& terms) {
    const LinePlan& plan = terms.plan();
    switch (terms.entry.row.item) {
    case Item::finished_length:
    case Item::extra:
    case Item::wear:
        return "as the job says";
    case Item::fitting:
        return "less the fitting, from the rope's bearing point to the fitting's working point";
    case Item::pin_centre:
        return "half the pin, which the job measures to";
    case Item::stretch:
        return working_of_stretch(terms);
    case Item::slack:
        return working_of_share(terms, *plan.slack);
    case Item::bedding:
        return working_of_share(terms, *plan.bedding);
    case Item::shrinkage:
        return "L (1/(1 - s) - 1), L = " + terms.fine(terms.sum_before) +
               ", s = " + percent(plan.shrinkage->share);
    case Item::eye_legs:
    case Item::loop_legs:
        return working_of_eye(terms);
    case Item::throat_to_bearing:
        return "less the eye, which lies within the finished length";
    case Item::knot_to_bearing:
        return "less the loop, which lies within the finished length";
    case Item::soft_eye:
        return "no length; a spread, for the pin that the eye will hang on is not known";
    case Item::take_up:
        return working_of_take_up(terms);
    case Item::setting:
        return working_of_setting(terms);
    case Item::milk_out:
        return working_of_milk_out(terms);
    case Item::spare:
        return working_of_spare(terms);
    case Item::rounding:
        return "up to the next whole " + terms.fine(plan.step);
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
    return working(Terms{piece, piece.ledger[at], before, units});
}

void write_working(Page& page, const Piece& piece, UnitSystem units, Citing& citing) {
    constexpr std::array columns{PageColumn{34}, PageColumn{4}, PageColumn{18, true},
                                 PageColumn{18, true}};
    page.row(columns, std::array<std::string, 4>{"item", "end", "length", "sum"});
    Nanometres sum = 0;
    for (std::size_t i = 0; i < piece.ledger.size(); ++i) {
        const auto& [row, end] = piece.ledger[i];
        sum += row.length;
        page.row(columns, std::array<std::string, 4>{std::string(name_of(row.item)),
                                                     std::string(end ? letter_of(*end) : "-"),
                                                     show_fine(from_nanometres(row.length), units),
                                                     show_fine(from_nanometres(sum), units)});
        page.paragraph("= " + working_of(piece, i, units), indent, 2);
        if (row.sd > 0.0) {
            page.paragraph("sd " + show_fine(Length(row.sd), units) + ", " +
                               std::string(name_of(row.origin)) +
                               ", errs with: " + group_of(piece.ledger, i, "line"),
                           indent, 2);
        }
        page.paragraph("source: " + std::string(citing.text(row.source)), indent, 2);
    }
}

} // namespace libsplice
