// What published rules ask of rope that carries a person, beside what this line has.
#include "libsplice/sheet/panel/panel_person.h"

#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

std::string strength_asked(Force least, const Piece& piece, UnitSystem units) {
    std::string text = "breaking strength of at least " + show_force(least, units);
    if (const auto& breaking = piece.line->rope->breaking) {
        text += "; this rope has " + show_force(breaking->value, units);
    }
    return text;
}

std::string factor_asked(double factor, const Piece& piece) {
    std::string text = "breaking strength over load of about " + show_number(factor, 1);
    if (piece.strength.design_factor) {
        text += "; this line has " + show_number(*piece.strength.design_factor, 1);
    }
    return text;
}

} // namespace

void write_person_rules(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    for (const PersonRule& rule : piece.line->person.rules) {
        const std::string asked = rule.strength ? strength_asked(*rule.strength, piece, units)
                                                : factor_asked(rule.factor.value_or(0.0), piece);
        page.fact("Rule", std::string(rule.name) + ": " + asked + " (" +
                              std::string(citing.text(rule.source)) + ")");
    }
    if (!piece.line->person.rules.empty()) {
        page.fact("", "None of these rules was written for a line on a small boat.");
    }
}

} // namespace libsplice
