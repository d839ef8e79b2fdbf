// Elastic: cut shorter than its way, for it is pulled out wherever it is.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/piece.h"

namespace libsplice {

/// Sets how far a line of shock cord is pulled out where its way is shortest, from its `stretch` or
/// its `tension`, which stand in the plan's working strain; with neither its length is the relaxed
/// one. Code::cannot_be_both, Code::stretch_missing, Code::strength_missing, Code::beyond_stretch.
void bind_elastic(const Rules& rules, LineFields& fields, LinePlan& plan);

/// Code::cannot_be_both where a line of another rope has a `stretch`.
void refuse_elastic_columns(LineFields& fields, const Rope& rope);

/// Sets what the cord does at both ends of its travel; Code::elastic_overstretched where it is
/// pulled out beyond its limit.
[[nodiscard]] std::optional<Fault> find_elastic(const LinePlan& plan, Piece& piece);

/// Cautions where it hangs slack or is pulled out beyond its working range, and of what it loses.
void add_elastic_cautions(const LinePlan& plan, Piece& piece);

} // namespace libsplice
