#include "libsplice/sheet/panel/panel_piece.h"

#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_stretch.h"
#include "libsplice/sheet/panel/working.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

/// The ends of which no source says what they lose.
std::string uncounted(const Piece& piece) {
    std::string text;
    for (const LineEnd end : {LineEnd::a, LineEnd::b}) {
        const End& allowance = *piece.plan->end(end).allowance;
        if (piece.plan->counts(end) && allowance.made && !allowance.retained) {
            text += (text.empty() ? "; not counted, for no source gives it: end " : ", end ") +
                    std::string(letter_of(end));
        }
    }
    return text;
}

} // namespace

void write_line_cautions(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    for (const PieceCaution& caution : piece.cautions) {
        if (!caution.end) {
            std::string text;
            append_caution(text, piece, caution, units, citing);
            page.fact("CAUTION", text);
        }
    }
}

void write_strength(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    if (piece.retained && piece.weaker) {
        page.fact("Strength", "end " + std::string(letter_of(*piece.weaker)) + " retains " +
                                  show_retained(*piece.retained, citing) +
                                  ", the least that a source gives; pins, bends and fittings are "
                                  "not counted");
    } else {
        page.fact("Strength", "no source says what these ends retain");
    }
    if (piece.design_factor) {
        page.fact("Design factor",
                  std::string(uncounted(piece).empty() ? "" : "at most ") +
                      show_number(*piece.design_factor, 1) +
                      ", breaking strength that is retained over the stated load of " +
                      show_force(*piece.plan->load, units) + uncounted(piece));
    } else if (piece.plan->person) {
        page.fact("Design factor", "not known: it needs the load and the rope's breaking "
                                   "strength");
    }
}

void write_ledger_of_piece(Page& page, const Piece& piece, const SheetOptions& options,
                           CitationLog& citing) {
    if (options.working) {
        page.section("LEDGER, WORKED OUT");
        write_working(page, piece, options.units, citing);
        write_lengths_at_pulls(page, piece, options.units, citing);
    } else {
        page.section("LEDGER");
        write_ledger(page, piece.ledger, "cut length", options.units, citing);
    }
}

void use_sources_of(const Piece& piece, CitationLog& citing) {
    for (const LedgerRow& entry : piece.ledger) {
        citing.use(entry.row.source);
    }
}

void write_foot(Page& page, const Counts& counts, const SheetOptions& options, const Book& book,
                const CitationLog& citing) {
    page.fact("On this sheet", "lines: " + std::to_string(counts.lines) +
                                   "; pieces to cut: " + std::to_string(counts.pieces) +
                                   "; lines not cut: " + std::to_string(counts.refused));
    page.blank();
    write_care(page);
    page.blank();
    page.fact("Spare", "for a risk of " + show_share(options.risk));
    write_origin(page, book, citing);
}

} // namespace libsplice
