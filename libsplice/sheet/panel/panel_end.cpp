#include "libsplice/sheet/panel/panel_end.h"

#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_heading.h"
#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

constexpr Nanometres too_little_to_show = nanometres_per_metre / 2000;

std::string bearing_point_of(LineEnd end) {
    return "the bearing point of end " + std::string(letter_of(end));
}

} // namespace

void write_end_of_piece(Page& page, const Piece& piece, LineEnd end, UnitSystem units,
                        CitationLog& citing) {
    const bool first = end == piece.line->ends.first_end;
    if (!piece.line->counts(end)) {
        page.end_heading("END " + std::string(end == LineEnd::a ? "A" : "B") +
                         ", the other side of the same " +
                         std::string(piece.line->end(other(end)).kind->declaration.name));
        write_running_marks(page, piece, end, units);
        return;
    }
    const auto& declaration = piece.line->end(end).kind->declaration;
    page.end_heading("END " + std::string(end == LineEnd::a ? "A" : "B") +
                     (piece.line->ends.closing ? ": "
                      : first                  ? ", made first: "
                                               : ", made last: ") +
                     std::string(declaration.name) + ", " + std::string(declaration.title));
    if (first) {
        write_running_marks(page, piece, end, units);
    } else {
        write_last_marks(page, piece, units);
    }
    const TemplateContext filling = filling_of(piece, end, units);
    write_steps(page, filling);
    write_bury(page, filling.allowance, units);
    write_measuring(page, filling.allowance);
    for (const PieceCaution& caution : piece.cautions) {
        if (caution.end == end) {
            std::string text;
            append_caution(text, piece, caution, units, citing);
            page.fact("CAUTION", text);
        }
    }
}

void write_check(Page& page, const Piece& piece, UnitSystem units) {
    if (!piece.check) {
        return;
    }
    const BoundLine& plan = *piece.line;
    const Nanometres reads = piece.check->reads;
    std::string text =
        how_to_pull(plan, units) + " From " + bearing_point_of(piece.check->from) + " to the " +
        standing_mark_of(*plan.end(piece.check->to).allowance, *plan.names) + " mark of end " +
        std::string(letter_of(piece.check->to)) + " must read " + show_length(reads, units);
    if (plan.fit.tolerance) {
        text += " (" + show_length(reads - *plan.fit.tolerance, units) + " to " +
                show_length(reads + *plan.fit.tolerance, units) + ")";
    }
    page.blank();
    page.fact("CHECK", text);
    page.write_in({"read"});
}

void write_over(Page& page, const Piece& piece, UnitSystem units) {
    if (piece.over < too_little_to_show) {
        return;
    }
    const BoundLine& plan = *piece.line;
    std::string parts;
    for (const LedgerRow& entry : piece.ledger) {
        if (lies_outside_tail(entry.row.item) && entry.row.item != Item::milk_out &&
            entry.row.length >= too_little_to_show) {
            parts += parts.empty() ? ". It holds " : ", ";
            parts += plan.names->of(entry.row.item);
            parts += ' ' + show_length(entry.row.length, units);
        }
    }
    page.fact("TRIM", "Trim the last " + show_length(piece.over, units) + " only after " +
                          (piece.check ? "the check" : "the line has been tried aboard") + parts +
                          ".");
}

} // namespace libsplice
