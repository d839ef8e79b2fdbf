// From a line's route to its finished length.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

#include <optional>

namespace libsplice {

/// Whether the line gives a route, as a table or as a points file.
[[nodiscard]] inline bool has_route(const JobLine& line) {
    return line.route != nullptr;
}

/// The line's route, measured along the centreline of its rope; nothing where the job gives a
/// length, or the rope could not be read. A fault is added to `cells`, placed at the point of the
/// route that it is about: those with which it was read, Code::route_impassable, and
/// Code::value_out_of_range for a route over 100 km.
[[nodiscard]] std::optional<RouteLength> bind_route(const Rope* rope, CellReader& cells);

} // namespace libsplice
