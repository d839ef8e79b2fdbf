// The states a line is in: as asked for, at the reference tension, and on the bench.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// Sets the plan's strains, first stretch, slack, shrinkage, milk-out and tape from its rope,
/// tension and ends, which stand in it already. Code::measured_relaxed, Code::slack_for_exact,
/// Code::stretch_missing, Code::strength_missing, Code::beyond_stretch; Code::cannot_be_both for a
/// `stretch` that does not go with the rope or with a tension.
void bind_states(const Book& book, const CutSettings& settings, LineFields& fields, LinePlan& plan);

} // namespace libsplice
