// The fold: a plan and a finished length become a ledger, marks and a cut length.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/cut/piece.h"

namespace libsplice {

/// Works the piece out from its plan and its finished length: fills ledger, marks, check, cautions
/// and strength. Pure but for `piece`, whose buffers are used again. Code::nothing_left,
/// Code::buries_overlap (with the length that the line would need), Code::refused_for_person.
[[nodiscard]] std::optional<Fault> fold(const LinePlan& plan, Nanometres finished, Piece& piece);

} // namespace libsplice
