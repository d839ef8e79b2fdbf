// A piece of rope to cut, finished: its ledger, its marks, its check, or the fault that stands in
// its place.
#pragma once

#include "libsplice/cut/bound_line.h"

#include <optional>
#include <string_view>
#include <vector>

namespace libsplice {

/// A row of a piece's ledger.
struct LedgerRow {
    Row row;
    std::optional<LineEnd> end; ///< none for what belongs to the whole line
};

/// A mark on a piece, from that end's cut end.
struct PieceMark {
    LineEnd end{};
    MarkName name{};
    Nanometres from_end = 0;
    std::size_t number = 0; ///< from 1 on at each end, in the order in which the tape meets them
};

/// Before the last end is made: from the first-made end's bearing point to the far throat mark of
/// the other, at the marking tension.
struct Check {
    LineEnd from{};
    LineEnd to{};
    Nanometres reads = 0;        ///< before the first end is loaded
    Nanometres reads_loaded = 0; ///< once it is loaded, its splice drawn out
};

/// Elastic, which is pulled out over its relaxed length wherever it is.
struct Elastic {
    Nanometres relaxed = 0; ///< between the bearing points
    double shortest = 0.0;  ///< how far it is pulled out where its way is shortest, as a share
    std::optional<double> longest;      ///< the same at the other end of its travel
    std::optional<Force> pull_shortest; ///< its pull there, where a source gives it
    std::optional<Force> pull_longest;
};

/// A line between its bearing points at one pull.
struct LengthAtPull {
    Tension tension;
    std::optional<Force> pull; ///< in newtons, where the breaking strength is known
    Length length;
    Length sd; ///< of its difference from the length that was asked for
};

/// How much longer a line gets from the reference tension to its load, else to its tension.
struct StretchAtLoad {
    Tension tension;
    Length longer;
    Length sd;
    CitationId source{};
};

/// What makes a line fall outside its tolerance most often, and what takes that away.
struct ChanceCause {
    Item item{};           ///< the row that it lies in
    std::string_view cure; ///< an imperative
    double after = 0.0;    ///< the chance that is left without it
};

/// What the job says of a line for people to read. Borrowed from the job's line; lives until the
/// next.
struct LineTexts {
    std::string_view name;
    std::string_view boat;
    std::int64_t quantity = 1;
    std::string_view rope;  ///< as the job names it
    std::string_view end_a; ///< the kinds' names as the job gives them
    std::string_view end_b;
    std::string_view state;
    std::string_view pair;
    std::string_view fit_first;
    std::string_view lot;
    std::string_view colour;
    std::string_view note;
};

/// One row of a job worked out. What it borrows from the job's line and the bound line lives until
/// the next piece. A refused piece has a fault and its texts, and nothing else.
struct Piece : LineTexts {
    const BoundLine* line = nullptr; ///< null in a refused piece
    const Fault* fault = nullptr;    ///< null in a piece that can be cut

    std::optional<Nanometres> finished; ///< as far as it could be read
    Nanometres loaded = 0; ///< rope between the bearing points, in the state that was asked for
    Nanometres cut = 0;
    std::vector<LedgerRow> ledger;
    std::vector<PieceMark> marks; ///< those of end a ascending, then those of end b
    Nanometres between_marks = 0; ///< last mark of end a to last mark of end b, never negative
    /// The marks that it lies between; nothing for a cut end.
    std::array<std::optional<MarkName>, 2> between;
    std::array<Nanometres, 2> outside_tails{}; ///< rope outside the tail of either end: nearer to
                                               ///< its cut end than any mark of its own
    std::optional<Check> check;                ///< none where the last end is only cut
    std::optional<double> chance_outside;      ///< of falling outside the tolerance
    std::optional<ChanceCause> chance_cause;   ///< the largest share of that chance
    std::optional<double>
        chance_apart;  ///< of lines of a pair: that two differ by more than they may
    Strength strength; ///< its line's; empty in a refused piece
    std::optional<StretchAtLoad> stretch; ///< where its rope's stretch at that pull is known
    std::vector<LengthAtPull> lengths;    ///< at several pulls, each once, the shortest first
    std::optional<Elastic> elastic; ///< of elastic of which the job says how far it is pulled out
    std::vector<PieceStep> steps;   ///< in the order in which they can be done
    std::vector<PieceCaution> cautions; ///< all of them: of its ends, its line and its length

    [[nodiscard]] Nanometres outside(LineEnd end) const {
        return outside_tails[static_cast<std::size_t>(end)];
    }

    /// A line that cannot be cut. The fault outlives the piece.
    [[nodiscard]] static Piece refused(const LineTexts& texts, std::optional<Nanometres> finished,
                                       const Fault& fault) {
        Piece piece;
        static_cast<LineTexts&>(piece) = texts;
        piece.finished = finished;
        piece.fault = &fault;
        return piece;
    }
};

} // namespace libsplice
