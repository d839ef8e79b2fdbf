// The way that a line is led, as facts of its panel.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// The piece has a plan; nothing is written of a line that is given by its length.
void write_route(Page& page, const Piece& piece, UnitSystem units);

/// How the finished length follows from the route, for the ledger's working.
[[nodiscard]] std::string route_working(const RouteLength& route, UnitSystem units);

} // namespace libsplice
