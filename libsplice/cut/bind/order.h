// Whether the ends of a line can be made in some order, and where rope that is kept lies.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// Sets the end that `extra` and `wear` lie at and what the rope for wear buys, in a line whose
/// ends, route and states are bound. Code::cannot_be_both if no end can keep such rope;
/// Code::order_impossible if one end keeps the other from being made or hung, with what can be
/// written instead.
void bind_order(BoundLine& line, CellReader& cells);

} // namespace libsplice
