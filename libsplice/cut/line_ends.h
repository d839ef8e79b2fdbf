// The two ends of a line: their kinds, their fields, their fittings.
#pragma once

#include "libsplice/cut/end_table.h"
#include "libsplice/cut/line_fields.h"
#include "libsplice/cut/line_plan.h"

namespace libsplice {

/// Binds both ends of a line whose rope and `made_first` stand in the plan already. Faults go to
/// `fields`.
void bind_ends(const JobLine& line, const Book& book, EndTable& ends, LineFields& fields,
               LinePlan& plan);

} // namespace libsplice
