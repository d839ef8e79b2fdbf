// The card of like lines: their piece told once, with a place for each of them.
#include "libsplice/sheet/panel/card/card.h"

#include "libsplice/sheet/panel/card/card_steps.h"
#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/rope_words.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>
#include <utility>

namespace libsplice {

namespace {

/// From the first end's bearing point to the cut end of the other.
Nanometres beyond_first_bearing(const Piece& piece) {
    const LineEnd first = piece.line->ends.first_end;
    return piece.cut - piece.line->first().allowance->total() - piece.outside(first);
}

/// Cells of the marks that share a row.
struct SharedCells {
    std::vector<std::string> from_cut_end;
    std::vector<std::string> from_before;
    std::vector<std::string> from_first; ///< empty at the end made first
};

/// Whether three or more marks lie evenly, as they read on the tape.
bool are_even(std::span<const PieceMark> marks, UnitSystem units) {
    if (marks.size() < 3) {
        return false;
    }
    const Nanometres apart = on_tape(marks[1].from_end - marks[0].from_end, units);
    Nanometres next = on_tape(marks[0].from_end, units);
    return std::ranges::all_of(marks, [&](const PieceMark& mark) {
        return on_tape(mark.from_end, units) == std::exchange(next, next + apart);
    });
}

std::string first_to_last(const std::vector<std::string>& cells) {
    return cells.empty() ? std::string() : cells.front() + " to " + cells.back();
}

std::string listed(const std::vector<std::string>& cells) {
    std::string list;
    for (const std::string& cell : cells) {
        list += (list.empty() ? "" : ", ") + cell;
    }
    return list;
}

/// The row of marks that share a number: alone, or places at which pairs of strands are dropped.
CardMark row_of(std::span<const PieceMark> marks, const SharedCells& cells, const Names& names,
                UnitSystem units) {
    const PieceMark& first = marks.front();
    CardMark row{first.number,
                 std::string(names.of(first.name)),
                 listed(cells.from_cut_end),
                 listed(cells.from_before),
                 listed(cells.from_first),
                 {}};
    for (const PieceMark& mark : marks) {
        row.places.push_back(mark.from_end);
    }
    if (are_even(marks, units)) {
        row.name = "drop a pair at each of " + std::to_string(marks.size()) + " marks, " +
                   cells.from_before.back() + " apart";
        row.from_cut_end = first_to_last(cells.from_cut_end);
        row.from_before = cells.from_before.front();
        row.from_first = first_to_last(cells.from_first);
    } else if (drops_pair(first.name)) {
        row.name = "drop a pair at each";
    }
    return row;
}

std::vector<CardMark> marks_of_card(const Piece& piece, LineEnd end, UnitSystem units) {
    // A closed line has no end that is there before the other.
    const bool last = !piece.line->ends.closing && end != piece.line->ends.first_end;
    const Nanometres beyond_bearing = beyond_first_bearing(piece);
    std::vector<CardMark> rows;
    Nanometres before = 0;
    std::span<const PieceMark> rest = marks_of(piece, end);
    while (!rest.empty()) {
        const auto other = std::ranges::find_if(
            rest, [&](const PieceMark& mark) { return mark.number != rest.front().number; });
        const auto together = rest.first(static_cast<std::size_t>(other - rest.begin()));
        SharedCells cells;
        for (const PieceMark& mark : together) {
            cells.from_cut_end.push_back(tape_cell(mark.from_end, units));
            cells.from_before.push_back(tape_cell(mark.from_end - before, units));
            if (last) {
                cells.from_first.push_back(tape_cell(beyond_bearing - mark.from_end, units));
            }
            before = mark.from_end;
        }
        rows.push_back(row_of(together, cells, *piece.line->names, units));
        rest = rest.subspan(together.size());
    }
    return rows;
}

/// The bury beside the smallest published one, and how thick the rope is over it.
std::string bury_of(const End& end, UnitSystem units) {
    if (!end.bury) {
        return {};
    }
    std::string text = show_length(end.bury->tail, units);
    if (end.bury->minimum > Length()) {
        text += "; smallest published " + show_length(end.bury->minimum, units);
    }
    if (end.bury->over > Length()) {
        text += "; rope over it " + show_fine(end.bury->over, units) + " thick";
    }
    return text;
}

std::string title_of(const Piece& piece, LineEnd end) {
    const BoundLine& line = *piece.line;
    const std::string letter(letter_of(end));
    if (!line.counts(end)) {
        return "End " + letter + ": the other side";
    }
    std::string kind(line.end(end).kind->declaration.name);
    if (line.ends.closing) {
        return kind;
    }
    return "End " + letter + (end == line.ends.first_end ? ", made first: " : ", made last: ") +
           kind;
}

CardEnd end_of_card(const Piece& piece, LineEnd end, UnitSystem units) {
    const BoundEnd& bound = piece.line->end(end);
    CardEnd card{end,
                 title_of(piece, end),
                 datum_of(bound, units),
                 bound.allowance->made,
                 marks_of_card(piece, end, units),
                 {},
                 {}};
    if (piece.line->counts(end)) {
        card.bury = bury_of(*bound.allowance, units);
    }
    return card;
}

std::vector<std::string> boxes_of(const Piece& piece) {
    std::vector<std::string> boxes;
    if (piece.check) {
        boxes.emplace_back("check read");
    }
    for (const LineEnd end : {piece.line->ends.first_end, piece.line->ends.last_end()}) {
        const End& allowance = *piece.line->end(end).allowance;
        const std::string letter(letter_of(end));
        if (!piece.line->counts(end)) {
            continue;
        }
        if (allowance.bury_reach > 0 && allowance.bury) {
            boxes.push_back("rope over bury " + letter + ", before");
            boxes.emplace_back("after");
        } else if (allowance.knot) {
            boxes.push_back("rope in knot " + letter);
        }
    }
    boxes.emplace_back("finished");
    return boxes;
}

/// `Between the marks, exit of end a to whipping of end b: 8.182 m`.
std::string between_of(const Piece& piece, UnitSystem units) {
    const auto side = [&](LineEnd end) {
        const auto& name = piece.between[static_cast<std::size_t>(end)];
        return (name ? std::string(piece.line->names->of(*name)) : std::string("cut end")) +
               " of end " + std::string(letter_of(end));
    };
    const LineEnd first = piece.line->ends.first_end;
    return side(first) + " to " + side(other(first)) + ": " +
           show_length(piece.between_marks, units);
}

/// Cautions beside what they concern, no more than a card has room for.
void place_cautions(Card& card, const Piece& piece, UnitSystem units, CitationLog& citing) {
    std::size_t placed = 0;
    for (const PieceCaution& caution : piece.cautions) {
        if (placed == most_cautions_on_card) {
            ++card.more_cautions;
            continue;
        }
        ++placed;
        std::string text;
        append_caution(text, piece, caution, units, citing);
        const auto end = std::ranges::find_if(card.ends, [&](const CardEnd& each) {
            return caution.end && each.end == *caution.end;
        });
        (end == card.ends.end() ? card.cautions : end->cautions).push_back(text);
    }
}

void note_sources(const Piece& piece, CitationLog& citing) {
    for (const LedgerRow& entry : piece.ledger) {
        citing.use(entry.row.source);
    }
}

} // namespace

Card card_of(const LikeLines& lines, const Methods& methods, UnitSystem units,
             CitationLog& citing) {
    const Piece& piece = lines.piece();
    Card card;
    card.name = piece.name.empty() ? "(no name)" : std::string(piece.name);
    card.boats = boats_in_words(lines.boats());
    card.count = lines.pieces();
    card.pieces = lines.boats();
    if (piece.fault != nullptr) {
        card.rope = std::string(piece.rope);
        card.error = piece.fault->text;
        return card;
    }
    card.rope = rope_in_words(*piece.line->rope, piece.colour, units);
    card.diameter = piece.line->rope->counting_diameter();
    card.cut = show_length(piece.cut, units);
    card.how = facts_of(piece, units);
    for (const LineEnd end : {piece.line->ends.first_end, piece.line->ends.last_end()}) {
        card.ends.push_back(end_of_card(piece, end, units));
    }
    card.between = between_of(piece, units);
    card.steps = steps_of(piece, methods, units);
    card.boxes = boxes_of(piece);
    place_cautions(card, piece, units, citing);
    note_sources(piece, citing);
    return card;
}

} // namespace libsplice
