// The two ends of a line: their kinds, their fields, their fittings.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bind/end_table.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// Binds both ends of a line whose rope and `first_end` stand in the plan already. Faults go to
/// `fields`.
void bind_ends(const JobLine& line, const Book& book, EndTable& ends, LineFields& fields,
               LinePlan& plan);

} // namespace libsplice
