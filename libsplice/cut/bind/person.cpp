// Holds a line that carries a person to the rules of the tables and to what its ends say.
#include "libsplice/cut/bind/person.h"

#include "libsplice/cut/layout.h"

#include <algorithm>

namespace libsplice {

namespace {

/// An end whose own cautions forbid it on such a line.
void refuse_end(LineEnd end, const BoundEnd& bound, const Citations& citations, CellReader& cells) {
    for (const Caution& caution : bound.allowance->cautions) {
        if (caution.weight == Caution::Weight::advice) {
            continue;
        }
        Fault fault{Code::refused_for_person, std::string(bound.kind->declaration.name) +
                                                  " is refused on a line that carries a person: " +
                                                  std::string(caution.text)};
        fault.rule = to_text(citations.at(caution.rule));
        cells.add(LineFault{std::move(fault), end == LineEnd::a ? Column::end_a : Column::end_b});
        return;
    }
}

/// The tables state a strength in newtons or pounds-force.
void add_rule(PersonVerdict& verdict, const Rule& rule) {
    for (const auto& [id, figure] : rule.figures) {
        PersonRule asks{rule.name, std::nullopt, std::nullopt, figure.source};
        if (id == FigureId::minimum_strength) {
            asks.strength =
                Force(figure.value * (figure.unit == FigureUnit::lbf ? newtons_per_lbf : 1.0));
        } else {
            asks.factor = figure.number();
        }
        verdict.rules.push_back(asks);
    }
}

} // namespace

PersonVerdict bind_person(bool carries, const Book& book, const Rope& rope, const BoundEnds& ends,
                          CellReader& cells) {
    PersonVerdict verdict;
    verdict.carries = carries;
    if (!verdict.carries) {
        return verdict;
    }
    for (const Rule& rule : book.catalogue().rules()) {
        if (std::ranges::find(rule.kinds, kind_of_person_rules) != rule.kinds.end() &&
            rule.applies_to(rope)) {
            add_rule(verdict, rule);
        }
    }
    for (const LineEnd end : both_ends) {
        if (ends.counts(end)) {
            refuse_end(end, ends.at(end), book.catalogue().citations(), cells);
        }
    }
    return verdict;
}

} // namespace libsplice
