// Says in words why a rope cannot run its way.
#include "libsplice/cut/bind/way_fault.h"

#include "libsplice/units/show.h"

namespace libsplice {

namespace {

std::string shown(Length length) {
    return show_fine(length, UnitSystem::metric);
}

std::string numbered(std::string_view what, std::size_t index) {
    return std::string(what) + ' ' + std::to_string(index + 1);
}

} // namespace

std::string way_fault_text(const WayFault& fault) {
    switch (fault.error) {
    case WayError::too_few:
        return "there are only " + std::to_string(fault.at) +
               " of what the route is made of; add "
               "what is missing";
    case WayError::same_place:
        return numbered("point", fault.at) + " lies where the one before it lies; take one out";
    case WayError::sheave_at_end:
        return numbered("point", fault.at) +
               " is an end of the line and cannot have a sheave; add the point where the line "
               "ends, or take the sheave out";
    case WayError::turns_right_back:
        return "at " + numbered("point", fault.at) +
               " the line turns right back on itself; move the points on either side apart by the "
               "sheave, or write the route as a purchase";
    case WayError::bends_overlap:
        return "the sheaves on the leg to " + numbered("point", fault.at) +
               " overlap: the bends "
               "take " +
               shown(fault.needed) + " and the leg is " + shown(fault.there) +
               " long; move the points apart, or take smaller sheaves";
    case WayError::rows_unlike:
        return "the second row has " + std::to_string(fault.at) +
               " eyelets, which does not go with the first; it takes as many, or in a zigzag one "
               "fewer";
    case WayError::turns_one_way:
        return "at " + numbered("pin", fault.at) +
               " the zigzag turns the same way as at the pin before; give both rows in the same "
               "direction";
    case WayError::cannot_pass:
        return "the rope cannot pass to " + numbered("pin", fault.at) + ": it takes " +
               shown(fault.needed) + " from pin to pin and there are " + shown(fault.there) +
               "; use thinner rope, or move the rows apart";
    case WayError::rail_too_near:
        return "the eyelet lies " + shown(fault.there) +
               " from the rail's centre, and rope on the "
               "rail lies " +
               shown(fault.needed) + " from it; give a wider gap";
    case WayError::blocks_meet_eased:
    case WayError::blocks_meet_hauled:
        return std::string(fault.error == WayError::blocks_meet_eased ? "eased" : "hauled") +
               ", the blocks meet: their axles are " + shown(fault.there) + " apart, and " +
               numbered("sheave", fault.at) + " with the rope takes " + shown(fault.needed);
    case WayError::hauled_past_run:
        return "hauled, the axles are " + shown(fault.there) + " apart, more than the " +
               shown(fault.needed) + " when eased; the run is the longest state";
    case WayError::becket_past_block:
        return "the becket lies " + shown(fault.there) +
               " from its axle, past the other block at " + shown(fault.needed);
    }
    return {};
}

} // namespace libsplice
