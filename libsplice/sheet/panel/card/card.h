// A bench card: all that a rigger needs to make a line, in finished texts, in the order in which
// the card is read. Every format lays out the same card.
#pragma once

#include "libsplice/sheet/panel/card/card_facts.h"
#include "libsplice/sheet/panel/card/card_steps.h"
#include "libsplice/sheet/panel/card/methods.h"
#include "libsplice/sheet/panel/like_lines.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/units/show.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice {

/// A row of an end's marks; lengths are cells of a column whose head names the unit. Strands that
/// are dropped in pairs share a row and a number.
struct CardMark {
    std::size_t number = 0;
    std::string name;
    std::string from_cut_end;
    std::string from_before;
    std::string from_first; ///< from the first end's bearing point; empty at the end made first
    std::vector<Nanometres> places; ///< from the cut end; more than one of pairs of strands
};

/// One end of the line.
struct CardEnd {
    LineEnd end{};
    std::string title; ///< `End a, made first: locked eye`
    std::string datum; ///< what a length is measured to
    bool made = false; ///< more than cut, sealed or whipped
    std::vector<CardMark> marks;
    std::vector<std::string> cautions;
    std::string bury; ///< the bury beside the smallest published one; empty without a bury
};

/// A card. Of a line that cannot be cut it says why, and nothing else.
struct Card {
    std::string name;
    std::string boats; ///< `Cat 1 to Cat 6`
    std::int64_t count = 0;
    std::string rope; ///< in words
    Length diameter;
    std::string cut;
    std::string error; ///< why it cannot be cut; else empty
    std::vector<CardFact>
        how; ///< the pull to mark at first, then what must be known before the work
    std::vector<CardEnd> ends; ///< in the order of the work
    std::string between;       ///< `exit of end a to exit of end b: 1.508 m`
    std::vector<CardStep> steps;
    std::vector<std::string> cautions; ///< of the whole line
    std::size_t more_cautions = 0;     ///< on the last page
    std::vector<std::string> boxes;    ///< what is written in, once for each piece
    std::vector<BoatCount> pieces;     ///< for whom
};

/// A card has room for these; the others are on the last page.
inline constexpr std::size_t most_cautions_on_card = 3;

/// The card of like lines. Steps that `methods` has a sheet for are referred to. What the card
/// rests on is noted in `citing`.
[[nodiscard]] Card card_of(const LikeLines& lines, const Methods& methods, UnitSystem units,
                           CitationLog& citing);

} // namespace libsplice
