// What a line is led through and what is asked of it, as JSON.
#include "libsplice/sheet/json/json_line.h"

#include "libsplice/sheet/panel/panel_person.h"

namespace libsplice {

namespace {

std::optional<Nanometres> counted(const std::optional<Length>& length) {
    return length ? std::optional(to_nanometres(*length)) : std::nullopt;
}

} // namespace

void write_route(JsonText& json, const Piece& piece) {
    json.key("route");
    if (piece.line == nullptr || !piece.line->route) {
        json.null();
        return;
    }
    const RouteLength& route = *piece.line->route;
    json.begin_object();
    json.metres("straight_m", to_nanometres(route.straight));
    json.metres("wrapped_m", to_nanometres(route.wrapped));
    json.key("turns");
    json.whole(static_cast<long long>(route.turns));
    json.metres("tail_eased_m", counted(route.tail_eased));
    json.metres("tail_hauled_m", counted(route.tail_hauled));
    json.end_object();
}

void write_person_rules(JsonText& json, const Piece& piece, CitationLog& citing) {
    json.key("person_rules");
    json.begin_array();
    if (piece.line != nullptr) {
        for (const PersonRule& rule : piece.line->person.rules) {
            json.begin_object();
            json.text("rule", rule.name);
            json.number("asks_n",
                        rule.strength ? std::optional(rule.strength->si()) : std::nullopt);
            json.number("asks_factor", rule.factor);
            json.text("source", citing.text(rule.source));
            json.end_object();
        }
    }
    json.end_array();
}

} // namespace libsplice
