// The way that a line is led, as facts of its panel.
#include "libsplice/sheet/panel/panel_route.h"

#include "libsplice/sheet/panel/panel_facts.h"

namespace libsplice {

namespace {

std::string turns_of(const RouteLength& route, UnitSystem units) {
    return show_fine(route.wrapped, units) + " in " + std::to_string(route.turns) +
           (route.turns == 1 ? " turn" : " turns");
}

} // namespace

void write_route(Page& page, const Piece& piece, UnitSystem units) {
    if (!piece.line->route) {
        return;
    }
    const RouteLength& route = *piece.line->route;
    page.fact("Route", route.turns == 0 ? "measured along the rope's centreline"
                                        : "measured along the rope's centreline, with " +
                                              turns_of(route, units));
    if (route.tail_eased) {
        page.fact("Tail",
                  show_length(*route.tail_eased, units) + " eased" +
                      (route.tail_hauled ? ", " + show_length(*route.tail_hauled, units) + " hauled"
                                         : std::string()));
    }
}

std::string route_working(const RouteLength& route, UnitSystem units) {
    return "along the route: " + show_fine(route.straight, units) + " straight" +
           (route.turns == 0 ? std::string() : " and " + turns_of(route, units));
}

} // namespace libsplice
