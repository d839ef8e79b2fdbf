#include "libsplice/sheet/panel/person_rules.h"

#include "libsplice/sheet/panel/words.h"

namespace libsplice {

namespace {

/// A strength that a rule asks for: the tables print it in newtons or pounds-force.
Force force_of(const Figure& figure) {
    return Force(figure.value * (figure.unit == FigureUnit::lbf ? newtons_per_lbf : 1.0));
}

std::string strength_asked(const Figure& figure, const Piece& piece, UnitSystem units) {
    std::string text = "breaking strength of at least " + show_force(force_of(figure), units);
    if (const auto& breaking = piece.plan->rope->breaking) {
        text += "; this rope has " + show_force(breaking->value, units);
    }
    return text;
}

std::string factor_asked(const Figure& figure, const Piece& piece) {
    std::string text = "breaking strength over load of about " + show_number(figure.number(), 1);
    if (piece.design_factor) {
        text += "; this line has " + show_number(*piece.design_factor, 1);
    }
    return text;
}

} // namespace

void write_person_rules(Page& page, const Piece& piece, UnitSystem units, Citing& citing) {
    for (const Rule* rule : piece.plan->person_rules) {
        for (const auto& [id, figure] : rule->figures) {
            const std::string asked = id == FigureId::minimum_strength
                                          ? strength_asked(figure, piece, units)
                                          : factor_asked(figure, piece);
            page.fact("Rule", rule->name + ": " + asked + " (" +
                                  std::string(citing.text(figure.source)) + ")");
        }
    }
    if (!piece.plan->person_rules.empty()) {
        page.fact("", "None of these rules was written for a line on a small boat.");
    }
}

void write_person_rules(JsonText& json, const Piece& piece, Citing& citing) {
    json.key("person_rules");
    json.begin_array();
    if (piece.plan != nullptr) {
        for (const Rule* rule : piece.plan->person_rules) {
            for (const auto& [id, figure] : rule->figures) {
                const bool strength = id == FigureId::minimum_strength;
                json.begin_object();
                json.text("rule", rule->name);
                json.number("asks_n",
                            strength ? std::optional(force_of(figure).si()) : std::nullopt);
                json.number("asks_factor",
                            strength ? std::nullopt : std::optional(figure.number()));
                json.text("source", citing.text(figure.source));
                json.end_object();
            }
        }
    }
    json.end_array();
}

} // namespace libsplice
