// The working of a ledger's rows as text.
#include "libsplice/sheet/panel/working.h"

#include "libsplice/sheet/words/ledger_group.h"
#include "libsplice/sheet/words/route_words.h"
#include "libsplice/sheet/words/words.h"
#include "libsplice/units/sail.h"

#include <array>
#include <cmath>

namespace libsplice {

namespace {

std::string shown(double number, OperandUnit unit, UnitSystem units) {
    switch (unit) {
    case OperandUnit::length:
        return show_fine(Length(number), units);
    case OperandUnit::share:
        return show_number(number * 100.0, 4) + " %";
    case OperandUnit::degrees:
        return show_number(number, 3) + " degrees";
    case OperandUnit::force:
        return show_force(Force(number), units);
    case OperandUnit::area:
        return show_number(number, 3) + " m2";
    case OperandUnit::wind:
        return show_number(number / metres_per_second_per_knot, 2) + " kn";
    case OperandUnit::mass:
        return show_number(number, 2) + " kg";
    case OperandUnit::number:
    case OperandUnit::none:
        break;
    }
    return show_number(number, 6);
}

/// Puts the number in the place of `{n}` where the formula has one; else it follows the formula.
void put_operand(std::string& formula, std::string& numbers, const OperandDeclaration& operand,
                 const std::string& number) {
    const std::string place = '{' + std::string(operand.letter) + '}';
    if (const std::size_t at = formula.find(place); at != std::string::npos) {
        formula.replace(at, place.size(), number);
        return;
    }
    numbers += ", " + std::string(operand.letter) + " = " + number;
    if (!operand.meaning.empty()) {
        numbers += ' ' + std::string(operand.meaning);
    }
}

constexpr std::size_t indent = 8;

} // namespace

std::string show_working(const Working& working, UnitSystem units) {
    const FormulaDeclaration& declaration = declaration_of(working.formula);
    std::string formula(declaration.text);
    std::string numbers;
    for (std::size_t i = 0; i < working.numbers.size(); ++i) {
        const OperandDeclaration& operand = declaration.operands.at(i);
        put_operand(formula, numbers, operand, shown(working.numbers[i], operand.unit, units));
    }
    if (working.sides == 2) {
        formula =
            working.numbers.empty() ? formula + ", both sides together" : "2 x (" + formula + ')';
    }
    return formula + numbers;
}

std::string working_of(const Piece& piece, std::size_t at, UnitSystem units) {
    const Working& working = piece.ledger[at].row.working;
    return working.formula == FormulaId::from_route && piece.line->route
               ? route_working(*piece.line->route, units)
               : show_working(working, units);
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
        if (std::abs(row.sd) > 0.0) {
            page.row_note("sd " + show_fine(Length(row.sd), units) + ", " +
                              std::string(name_of(row.origin)) +
                              ", errs with: " + group_of(piece.ledger, i, "line", citing.names()),
                          indent, 2);
        }
        page.row_note("source: " + std::string(citing.text(row.source)), indent, 2);
    }
}

} // namespace libsplice
