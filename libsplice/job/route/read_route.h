// Reads the routes of a job's lines.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/job/line.h"
#include "libsplice/job/route/route.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace libsplice {

/// The route that a line gives; or nothing, and why, each fault with its place.
struct GivenRoute {
    std::optional<Route> route;
    std::vector<Fault> faults;
};

/// Reads each route of a job once, however many lines give it. Code::route_not_readable for an
/// unknown, missing or ill-shaped key; Code::not_a_length, Code::not_a_number,
/// Code::value_out_of_range for a value; Code::file_unreadable and the faults of a CSV file for a
/// points file, which is looked for beside the job's own file.
class RouteReader {
  public:
    /// Without `opens_files` a route that names a points file is Code::route_not_readable: a host's
    /// user must not make it open files.
    explicit RouteReader(bool opens_files) : opens_files_(opens_files) {}

    /// The route of the line's cell, as a table or as the name of a points file; null where the
    /// cell is empty. It lives as long as this.
    [[nodiscard]] const GivenRoute* route_of(const JobLine& line);

  private:
    bool opens_files_;
    std::map<const Node*, GivenRoute> of_tables_;
    std::map<std::string, GivenRoute, std::less<>> of_files_;
};

} // namespace libsplice
