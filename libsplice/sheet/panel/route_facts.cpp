#include "libsplice/sheet/panel/route_facts.h"

#include "libsplice/sheet/panel/panel_facts.h"

namespace libsplice {

namespace {

std::string turns_of(const RouteLength& route, UnitSystem units) {
    return show_fine(route.wrapped, units) + " in " + std::to_string(route.turns) +
           (route.turns == 1 ? " turn" : " turns");
}

std::optional<Nanometres> counted(const std::optional<Length>& length) {
    return length ? std::optional(to_nanometres(*length)) : std::nullopt;
}

} // namespace

void write_route(Page& page, const Piece& piece, UnitSystem units) {
    if (!piece.plan->route) {
        return;
    }
    const RouteLength& route = *piece.plan->route;
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

void write_route(JsonText& json, const Piece& piece) {
    json.key("route");
    if (piece.plan == nullptr || !piece.plan->route) {
        json.null();
        return;
    }
    const RouteLength& route = *piece.plan->route;
    json.begin_object();
    json.metres("straight_m", to_nanometres(route.straight));
    json.metres("wrapped_m", to_nanometres(route.wrapped));
    json.key("turns");
    json.whole(static_cast<long long>(route.turns));
    json.metres("tail_eased_m", counted(route.tail_eased));
    json.metres("tail_hauled_m", counted(route.tail_hauled));
    json.end_object();
}

std::string route_working(const RouteLength& route, UnitSystem units) {
    return "along the route: " + show_fine(route.straight, units) + " straight" +
           (route.turns == 0 ? std::string() : " and " + turns_of(route, units));
}

} // namespace libsplice
