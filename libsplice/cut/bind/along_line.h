// Where a line runs and what is done along it: sheaves, cleat, sleeve, and whether it can be
// turned.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// What the columns headroom, travel, cleat, smallest_hole, sleeve and reversible say.
/// Code::not_a_length for a sleeve that is not `0.6 m at 8.2 m`.
[[nodiscard]] AlongLine read_along_line(CellReader& cells);

/// The same with what the tables say of it. Code::cannot_be_both where a reversible line has unlike
/// ends.
[[nodiscard]] AlongLine bind_along_line(AlongLine along, const Rules& rules, const Rope& rope,
                                        const BoundEnds& ends, CellReader& cells);

} // namespace libsplice
