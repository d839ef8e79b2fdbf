// Where a line runs and what is done along it: sheaves, cleat, sleeve, and whether it can be
// turned.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// Reads the columns headroom, travel, cleat, smallest_hole, sleeve, reversible and wash into the
/// plan. Code::not_a_length for a sleeve that is not `0.6 m at 8.2 m`.
void read_way(const JobLine& line, LineFields& fields, LinePlan& plan);

/// Adds what the tables say of them, once rope and ends stand in the plan. Code::cannot_be_both
/// where a reversible line has unlike ends.
void bind_way(const Book& book, LineFields& fields, LinePlan& plan);

} // namespace libsplice
