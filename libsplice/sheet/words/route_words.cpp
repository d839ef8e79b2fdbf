// The way that a line is led, in words.
#include "libsplice/sheet/words/route_words.h"

namespace libsplice {

std::string turns_in_words(const RouteLength& route, UnitSystem units) {
    return show_fine(route.wrapped, units) + " in " + std::to_string(route.turns) +
           (route.turns == 1 ? " turn" : " turns");
}

std::string route_working(const RouteLength& route, UnitSystem units) {
    return "along the route: " + show_fine(route.straight, units) + " straight" +
           (route.turns == 0 ? std::string() : " and " + turns_in_words(route, units));
}

} // namespace libsplice
