// How close a line has to be, and the rope that it gets so that it is not short.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// From the columns fit, tolerance, spare, extra and wear, and the shop's risk and step.
/// Code::tolerance_without_exact.
[[nodiscard]] FitAndSpare bind_fit(const CutSettings& settings, CellReader& cells);

} // namespace libsplice
