// The line of a knot as points in a CSV file.
#pragma once

#include "libsplice/base/fault.h"

#include <array>
#include <string>
#include <vector>

namespace libsplice {

/// Most points that a file may hold.
inline constexpr std::size_t most_curve_points = 20'000;

/// Reads the file `path`: columns `x`, `y` and `z`, plain numbers in rope diameters, a point a row.
/// Every fault is added to `faults`, with its place; the points are of use only where none was.
[[nodiscard]] std::vector<std::array<double, 3>> read_curve_file(const std::string& path,
                                                                 std::vector<Fault>& faults);

} // namespace libsplice
