// What to be careful of in a line: what its ends say, and what only the whole line shows.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/cut/piece.h"

#include <optional>

namespace libsplice {

/// Code::refused_for_person where the line carries a person and an end is not made in such a line.
[[nodiscard]] std::optional<Fault> refuse_for_person(const LinePlan& plan);

/// Sets the cautions of both ends and of the line. The ledger, the cut length and what the elastic
/// does must stand.
void collect_cautions(const LinePlan& plan, Piece& piece);

} // namespace libsplice
