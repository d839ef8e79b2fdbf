// The way that a line's length was measured along.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// A fact on the route of a piece that has one, and the tail of a purchase eased and hauled.
void write_route(Page& page, const Piece& piece, UnitSystem units);

/// `"route": {"straight_m", "wrapped_m", "turns", "tail_eased_m", "tail_hauled_m"}`, or null.
void write_route(JsonText& json, const Piece& piece);

/// The route's parts, as the working of a finished length.
[[nodiscard]] std::string route_working(const RouteLength& route, UnitSystem units);

} // namespace libsplice
