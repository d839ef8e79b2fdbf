// Elastic: cut shorter than its way, because it is pulled out wherever it is.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/piece.h"

namespace libsplice {

/// Sets how far a line of shock cord is pulled out where its way is shortest, from its `stretch` or
/// its `tension`; with neither its length is the relaxed one. Code::cannot_be_both,
/// Code::stretch_missing, Code::strength_missing, Code::beyond_stretch.
void bind_elastic(const Rules& rules, const Rope& rope, CellReader& cells, States& states);

/// Code::cannot_be_both where a line of another rope has a `stretch`.
void refuse_elastic_columns(CellReader& cells, const Rope& rope);

/// What the cord does at both ends of its travel, with `loaded` between its bearing points where
/// its way is shortest; nothing where the job does not say how far it is pulled out.
[[nodiscard]] std::optional<Elastic> elastic_of(const BoundLine& line, Nanometres loaded);

/// Cautions where it hangs slack or is pulled out beyond its working range or the customary limit,
/// with the cord that would stay inside, and of what it loses.
void add_elastic_cautions(const BoundLine& line, Piece& piece);

} // namespace libsplice
