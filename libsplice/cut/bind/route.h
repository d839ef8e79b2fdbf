// From a line's route to its finished length.
#pragma once

#include "libsplice/cut/bound_line.h"

#include <optional>
#include <vector>

namespace libsplice {

/// Whether the line gives a route, as a table or as a points file.
[[nodiscard]] inline bool has_route(const JobLine& line) {
    return line.route != nullptr || !line.text(Column::route).empty();
}

/// Sets the plan's route from the line's, measured along the centreline of the plan's rope. In a
/// state that carries no load, the plan's tension goes: nothing is to be taken off for it. A fault
/// is added to `faults`, placed at the point of the route that it is about: those of read_route,
/// Code::route_impassable, Code::route_not_readable for a points file that the settings do not
/// let it read, and Code::value_out_of_range for a route over 100 km. Expects a line
/// with a route and a plan with its rope.
void bind_route(const JobLine& line, const CutSettings& settings, std::vector<Fault>& faults,
                LinePlan& plan);

} // namespace libsplice
