// How long a made line is at other pulls than the one that its length was asked at.
#pragma once

#include "libsplice/cut/piece.h"

#include <vector>

namespace libsplice {

/// A line between its bearing points at one pull.
struct LengthAtPull {
    Tension tension;
    std::optional<Force> pull; ///< in newtons, where the breaking strength is known
    Length length;
    Length sd; ///< of its difference from the length that was asked for
};

/// The line's length at the reference tension, at 10 %, 20 % and 30 % of breaking strength, at its
/// own tension and at its load, in order of pull, each once. Those that print says nothing of are
/// left out; none for rope that is measured relaxed, or without a stretch in the tables.
[[nodiscard]] std::vector<LengthAtPull> lengths_at_pulls(const Piece& piece);

/// The pull that a line works at: its load, else its tension; nothing where it has neither.
[[nodiscard]] std::optional<Tension> working_pull(const LinePlan& plan);

/// How much longer a line gets from the reference tension to its working pull.
struct StretchAtLoad {
    Tension tension;
    Length longer;
    Length sd;
    CitationId source{};
};

/// Nothing where the line has no working pull or no source gives the rope's stretch.
/// Code::strength_missing, Code::beyond_stretch.
[[nodiscard]] std::optional<Result<StretchAtLoad>> stretch_at_load(const Piece& piece);

} // namespace libsplice
