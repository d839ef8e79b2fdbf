// Whether a rope meets the needs of a line, and the first that it does not.
#pragma once

#include "libsplice/choose/candidates.h"
#include "libsplice/choose/needs.h"
#include "libsplice/cut/piece.h"

#include <optional>
#include <string>
#include <string_view>

namespace libsplice {

/// The need that a rope fails first, and by how much.
struct Failure {
    std::string need; ///< the column's name; of a line that cannot be cut, that of its fault
    std::string text;
};

/// What it fits; nothing if it is not asked for or not known.
struct Fits {
    std::optional<bool> ends;  ///< whether its ends can be made
    std::optional<bool> cleat; ///< or whatever holds it, by its sort and its size
    std::optional<bool> sheave;
    std::optional<bool> hole;
    std::optional<bool> hand;
    std::optional<bool> heat;
};

/// A rope on a line.
struct Verdict {
    std::optional<Length> give;   ///< from set to load
    std::optional<double> factor; ///< breaking strength over load, after ends, bends and knots
    Fits fits;
    std::optional<Nanometres> buy; ///< of all pieces; nothing if it cannot be cut
    std::optional<double> price;   ///< of that, in the shop's own money
    std::optional<double> mass_kg;
    std::optional<Failure> fails; ///< nothing: it meets every need
};

/// What is known of a line before it is cut from a rope, from like ropes that were tried.
struct Foreseen {
    std::optional<Length> length;   ///< of rope under load
    std::optional<double> retained; ///< of its strength, after ends, bends and knots
};

/// The need that a rope fails by itself, before the line is cut from it; nothing if it may serve.
[[nodiscard]] std::optional<Column> failed_by_rope(const Candidate& candidate, const Needs& needs,
                                                   const ChoiceTables& tables,
                                                   const Foreseen& foreseen);

/// How far `length` of the rope gives from set to load; nothing if a pull or its stretch is not
/// known. A line without a set tension is set slack.
[[nodiscard]] std::optional<Length> give_of(const Candidate& candidate, const Needs& needs,
                                            Length length);

/// The verdict on a piece that was cut from the rope, or refused.
[[nodiscard]] Verdict verdict_on(const Piece& piece, const Candidate& candidate, const Needs& needs,
                                 const ChoiceTables& tables);

} // namespace libsplice
