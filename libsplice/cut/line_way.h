// Where a line runs and what is done along it: sheaves, cleat, sleeve, and whether it can be
// turned.
#pragma once

#include "libsplice/cut/line_fields.h"
#include "libsplice/cut/line_plan.h"

namespace libsplice {

/// Reads the columns headroom, travel, cleat, passes, sleeve and turnable into the plan, whose rope
/// and ends stand in it already. Code::cannot_be_both where a turnable line has unlike ends,
/// Code::not_a_length for a sleeve that is not `0.6 m at 8.2 m`.
void bind_way(const JobLine& line, const Book& book, LineFields& fields, LinePlan& plan);

} // namespace libsplice
