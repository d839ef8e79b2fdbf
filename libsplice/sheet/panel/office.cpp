// The last page, for the office: what every card is, what it rests on, and what all sheets say.
#include "libsplice/sheet/panel/office.h"

#include "libsplice/sheet/panel/card/card.h"
#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_person.h"
#include "libsplice/sheet/panel/panel_piece.h"
#include "libsplice/sheet/panel/panel_stretch.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/rope_words.h"

#include <array>

namespace libsplice {

namespace {

std::string unit_in_brackets(std::string_view unit) {
    return unit.empty() ? std::string() : " [" + std::string(unit) + ']';
}

void write_summary(Page& page, const std::deque<LikeLines>& cards, UnitSystem units) {
    static constexpr std::array columns{PageColumn{4, true}, PageColumn{22},
                                        PageColumn{14},      PageColumn{22},
                                        PageColumn{4, true}, PageColumn{8, true}};
    page.section("CARDS");
    page.head(columns, std::array<std::string, 6>{"card", "line", "boats", "rope", "make",
                                                  "cut" + unit_in_brackets(metre_unit(units))});
    std::size_t number = 0;
    for (const LikeLines& lines : cards) {
        const Piece& piece = lines.piece();
        const bool made = piece.fault == nullptr;
        page.row(columns, std::array<std::string, 6>{
                              std::to_string(++number), std::string(piece.name),
                              boats_in_words(lines.boats()),
                              made ? rope_in_words(*piece.line->rope, piece.colour, units)
                                   : std::string(piece.rope),
                              std::to_string(lines.pieces()),
                              made ? metre_cell(piece.cut, units) : std::string("not cut")});
    }
}

/// What the rope outside the tail of the end made last is for.
std::string outside_tail_in_words(const Piece& piece, UnitSystem units) {
    constexpr Nanometres too_little_to_show = nanometres_per_metre / 2000;
    std::string text;
    for (const LedgerRow& entry : piece.ledger) {
        if (lies_outside_tail(entry.row.item) && entry.row.length >= too_little_to_show) {
            text += text.empty() ? "" : ", ";
            text += piece.line->names->of(entry.row.item);
            text += ' ' + show_length(entry.row.length, units);
        }
    }
    return text;
}

void write_card(Page& page, const LikeLines& lines, std::size_t number, const SheetOptions& options,
                CitationLog& citing) {
    const Piece& piece = lines.piece();
    page.section("CARD " + std::to_string(number) + ", " + std::string(piece.name));
    page.fact("Beyond the tail", outside_tail_in_words(piece, options.units));
    if (piece.chance_outside) {
        std::string text = "a chance of " + show_share(*piece.chance_outside);
        if (const auto& cause = piece.chance_cause) {
            text += ", most of it from " + std::string(piece.line->names->of(cause->item)) + ": " +
                    std::string(cause->cure) + ", and " + show_share(cause->after) + " is left";
        }
        page.fact("Outside the tolerance", text);
    }
    write_stretch_facts(page, piece, options.units, citing);
    write_strength(page, piece, options.units, citing);
    write_person_rules(page, piece, options.units, citing);
    for (std::size_t i = most_cautions_on_card; i < piece.cautions.size(); ++i) {
        std::string text;
        append_caution_with_end(text, piece, piece.cautions[i], options.units, citing);
        page.fact("Caution", text);
    }
    if (options.ledger || options.working) {
        write_ledger_of_piece(page, piece, options, citing);
    }
}

} // namespace

void write_office(Page& page, const std::deque<LikeLines>& cards, const Counts& counts,
                  const SheetOptions& options, Credits credits, CitationLog& citing) {
    if (cards.size() > 1) {
        write_summary(page, cards, options.units);
    }
    std::size_t number = 0;
    for (const LikeLines& lines : cards) {
        ++number;
        if (lines.piece().fault == nullptr) {
            write_card(page, lines, number, options, citing);
        }
    }
    page.section("ABOUT THIS SHEET");
    write_foot(page, counts, options, credits, citing);
}

} // namespace libsplice
