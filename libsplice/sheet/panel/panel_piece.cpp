// What is known of a line's strength, its ledger, and the foot of every sheet.
#include "libsplice/sheet/panel/panel_piece.h"

#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_stretch.h"
#include "libsplice/sheet/panel/working.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

/// What the design factor leaves out.
std::string uncounted(const Strength& strength) {
    std::string text;
    for (const std::string& what : strength.not_counted) {
        text += (text.empty() ? "; not counted, because no source gives it: " : ", ") + what;
    }
    return text;
}

/// The place that a strength is retained at.
std::string weak_place(const Strength& strength) {
    std::string end =
        strength.weaker ? "end " + std::string(letter_of(*strength.weaker)) : std::string();
    switch (strength.place) {
    case WeakPlace::pin:
        return "the bend over the pin of " + end;
    case WeakPlace::sheave:
        return "the bend over its smallest sheave";
    case WeakPlace::end:
        break;
    }
    return end;
}

/// How the load was worked out, if it was.
void write_load(Page& page, const Strength& strength, UnitSystem units, CitationLog& citing) {
    if (strength.load_working) {
        page.fact("Load", show_force(*strength.load, units) + " = " +
                              show_working(strength.load_working->working, units) + " (" +
                              std::string(citing.text(strength.load_working->source)) + ')');
    }
}

} // namespace

void write_strength(Page& page, const Piece& piece, UnitSystem units, CitationLog& citing) {
    const Strength& strength = piece.strength;
    if (strength.retained) {
        page.fact("Strength", weak_place(strength) + " retains " +
                                  show_retained(*strength.retained, citing) +
                                  ", the least that a source gives" + uncounted(strength));
    } else {
        page.fact("Strength", "no source says what these ends retain");
    }
    write_load(page, strength, units, citing);
    if (strength.design_factor) {
        page.fact("Design factor",
                  std::string(strength.not_counted.empty() ? "" : "at most ") +
                      show_number(*strength.design_factor, 1) +
                      ", breaking strength that is retained over the stated load of " +
                      show_force(*strength.load, units));
    } else if (piece.line->person.carries) {
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

void write_foot(Page& page, const Counts& counts, const SheetOptions& options, Credits credits,
                const CitationLog& citing) {
    page.fact("On this sheet", "lines: " + std::to_string(counts.lines) +
                                   "; pieces to cut: " + std::to_string(counts.pieces) +
                                   "; lines not cut: " + std::to_string(counts.refused));
    page.blank();
    write_care(page);
    page.blank();
    page.fact("Spare", "for a risk of " + show_share(options.risk));
    write_origin(page, credits, citing);
}

} // namespace libsplice
