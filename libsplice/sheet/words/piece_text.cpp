// Fills each caution and step with the figures of its own end.
#include "libsplice/sheet/words/piece_text.h"

#include "libsplice/sheet/words/words.h"

#include <gsl/assert>

namespace libsplice {

TemplateContext filling_of(const Piece& piece, LineEnd end, UnitSystem units) {
    Expects(piece.line != nullptr);
    const Nanometres over = piece.outside(end);
    return {*piece.line->end(end).allowance, *piece.line->names, over, units, {}, {}};
}

void append_rule(std::string& into, CitationId rule, CitationLog& citing) {
    const std::string_view text = citing.rule(rule);
    if (!text.empty()) {
        into += " (";
        into += text;
        into += ')';
    }
}

void append_caution(std::string& into, const Piece& piece, const PieceCaution& caution,
                    UnitSystem units, CitationLog& citing) {
    if (caution.end) {
        TemplateContext filling = filling_of(piece, *caution.end, units);
        filling.amounts = caution.amounts;
        append_filled(into, caution.caution.text, filling);
    } else {
        append_amounts(into, caution.caution.text, caution.amounts, units);
    }
    append_rule(into, caution.caution.rule, citing);
}

void append_step(std::string& into, const Piece& piece, const PieceStep& step, UnitSystem units) {
    if (!step.end) {
        append_amounts(into, step.text, step.amounts, units, step.named);
        return;
    }
    TemplateContext context = filling_of(piece, *step.end, units);
    context.amounts = step.amounts;
    context.named = step.named;
    append_filled(into, step.text, context);
}

void append_caution_with_end(std::string& into, const Piece& piece, const PieceCaution& caution,
                             UnitSystem units, CitationLog& citing) {
    if (caution.end) {
        into += "end ";
        into += letter_of(*caution.end);
        into += ": ";
    }
    append_caution(into, piece, caution, units, citing);
}

} // namespace libsplice
