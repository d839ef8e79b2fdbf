// The two ends of a line: their kinds, their fields, their fittings.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bind/end_table.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// Binds both ends of a line. `rope` is null where the line's rope could not be read: then the
/// kinds are looked up and nothing is worked out. A made end of a line that is cut to fit aboard is
/// made there if it is the last. Faults go to `cells`; an end that has one has no
/// allowance.
[[nodiscard]] BoundEnds bind_ends(const Book& book, EndTable& table, const Rope* rope, Fit fit,
                                  CellReader& cells);

} // namespace libsplice
