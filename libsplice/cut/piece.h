// A piece of rope to cut: its ledger, its marks, its check, or the fault that stands in its place.
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
    Nanometres reads = 0;
};

/// A caution of a piece: a text that may hold an end's values, and the rule it rests on.
struct PieceCaution {
    Caution caution;
    std::optional<LineEnd> end;
};

/// Elastic, which is pulled out over its relaxed length wherever it is.
struct Elastic {
    Nanometres relaxed = 0; ///< between the bearing points
    double shortest = 0.0;  ///< how far it is pulled out where its way is shortest, as a share
    std::optional<double> longest;      ///< likewise at the other end of its travel
    std::optional<Force> pull_shortest; ///< its pull there, where a source gives it
    std::optional<Force> pull_longest;
};

/// One row of a job worked out. Texts are borrowed from the job's line and the plan and live until
/// the next piece. A refused piece has a fault, no ledger and no marks.
struct Piece {
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

    const LinePlan* plan = nullptr; ///< null in a refused piece
    const Fault* fault = nullptr;   ///< null in a piece that can be cut

    std::optional<Nanometres> finished; ///< as far as it could be read
    Nanometres loaded = 0; ///< rope between the bearing points, in the state that was asked for
    Nanometres cut = 0;
    std::vector<LedgerRow> ledger;
    std::vector<PieceMark> marks; ///< those of end a ascending, then those of end b
    Nanometres between_marks = 0; ///< last mark of end a to last mark of end b
    Nanometres over = 0; ///< rope outside the tail of the end made last: spare and the like
    std::optional<Check> check;
    std::optional<double> outside;    ///< chance of falling outside the tolerance
    std::optional<Retained> retained; ///< of the weaker end, where a source gives it
    std::optional<LineEnd> weaker;
    /// Breaking strength over the stated load, less what the ends are known to lose; an upper bound
    /// where an end's loss is not known.
    std::optional<double> design_factor;
    std::optional<Elastic> elastic; ///< of elastic of which the job says how far it is pulled out
    std::vector<PieceCaution> cautions;
};

} // namespace libsplice
