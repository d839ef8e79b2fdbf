// The way that a line is led, in words.
#pragma once

#include "libsplice/cut/bound_line.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// `120.5 mm in 3 turns`.
[[nodiscard]] std::string turns_in_words(const RouteLength& route, UnitSystem units);

/// How the finished length follows from the route, for the ledger's working.
[[nodiscard]] std::string route_working(const RouteLength& route, UnitSystem units);

} // namespace libsplice
