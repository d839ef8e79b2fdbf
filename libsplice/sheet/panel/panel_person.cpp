// What published rules ask of rope that carries a person, beside what this line has.
#include "libsplice/sheet/panel/panel_person.h"

#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

std::string strength_asked(const Figure& figure, const Piece& piece, UnitSystem units) {
    std::string text = "breaking strength of at least " + show_force(strength_of(figure), units);
    if (const auto& breaking = piece.line->rope->breaking) {
        text += "; this rope has " + show_force(breaking->value, units);
    }
    return text;
}

std::string factor_asked(const Figure& figure, const Piece& piece) {
    std::string text = "breaking strength over load of about " + show_number(figure.number(), 1);
    if (piece.strength.design_factor) {
        text += "; this line has " + show_number(*piece.strength.design_factor, 1);
    }
    return text;
}

} // namespace

Force strength_of(const Figure& figure) {
    return Force(figure.value * (figure.unit == FigureUnit::lbf ? newtons_per_lbf : 1.0));
}

void write_person_rules(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    for (const Rule* rule : piece.line->person.rules) {
        for (const auto& [id, figure] : rule->figures) {
            const std::string asked = id == FigureId::minimum_strength
                                          ? strength_asked(figure, piece, units)
                                          : factor_asked(figure, piece);
            page.fact("Rule", rule->name + ": " + asked + " (" +
                                  std::string(citing.text(figure.source)) + ")");
        }
    }
    if (!piece.line->person.rules.empty()) {
        page.fact("", "None of these rules was written for a line on a small boat.");
    }
}

} // namespace libsplice
