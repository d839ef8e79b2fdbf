// Reads the route of a line.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/job/line.h"
#include "libsplice/job/route/route.h"

#include <optional>
#include <vector>

namespace libsplice {

/// Whether the line's route names a points file.
[[nodiscard]] bool names_points_file(const JobLine& line);

/// The route that `line` gives, as a table or as the name of a points file (which is looked for
/// beside the job's own file), or nothing: each of its faults has then been added to `faults`, with
/// its place. Code::route_not_readable for an unknown, missing or ill-shaped key;
/// Code::not_a_length, Code::not_a_number, Code::value_out_of_range for a value;
/// Code::file_unreadable and the faults of a CSV file for a points file. Expects a line with a
/// route.
[[nodiscard]] std::optional<Route> read_route(const JobLine& line, std::vector<Fault>& faults);

} // namespace libsplice
