// The steps of a whole line, in the order in which they can be done.
#pragma once

#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// Puts the steps of both ends together with what belongs to the line: thread, reeve, check, trim,
/// hang, and the last cut aboard. The line is complete but for its cautions; bind_order() has
/// passed it.
[[nodiscard]] OrderOfWork order_of_work(const BoundLine& line);

} // namespace libsplice
