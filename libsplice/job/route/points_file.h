// The points of a route in a CSV file of their own.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/job/route/route.h"

#include <string>
#include <vector>

namespace libsplice {

/// Reads the file `path`: columns `x`, `y` and, where wanted, `z` and `sheave`, in any order; a
/// heading may give a unit, as in `x [m]`. Every fault is added to `faults`, with its place: a file
/// that cannot be read, a heading that is unknown, missing or stands twice, a cell that is no
/// length. The points are of use only where no fault was added.
[[nodiscard]] std::vector<RoutePoint> read_points_file(const std::string& path,
                                                       std::vector<Fault>& faults);

} // namespace libsplice
