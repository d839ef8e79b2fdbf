// Holds the rope between the throats against the buries that lie there.
#include "libsplice/cut/judge/room.h"

#include "libsplice/cut/layout.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

/// How fast the rope between the throats grows with the finished length.
double growth_of(const BoundLine& line) {
    const States& states = line.states;
    return line.first().allowance->laid * (1.0 + states.marking_strain) /
           (1.0 + states.working_strain) /
           (1.0 + (states.first_stretch ? states.first_stretch->share : 0.0)) /
           (1.0 + (states.slack ? states.slack->share : 0.0));
}

} // namespace

std::optional<LineFault> check_room(const BoundLine& line, const Piece& piece,
                                    Nanometres finished) {
    const Nanometres room = room_between(line, piece);
    const Nanometres needed =
        line.first().allowance->bury_reach + line.last().allowance->bury_reach;
    if (room > 0 && room >= needed) {
        return std::nullopt;
    }
    const Nanometres millimetre = nanometres_per_metre / 1000;
    const double short_by = static_cast<double>(std::max<Nanometres>(needed, 1) - room);
    const Nanometres lacking = std::llround(std::ceil(short_by / growth_of(line)));
    const Nanometres least = (finished + lacking + millimetre) / millimetre * millimetre;
    if (needed == 0) {
        return LineFault{
            Fault{Code::nothing_left, "nothing is left between the ends of a line of " +
                                          show_length(finished, UnitSystem::metric) +
                                          "; fittings and ends need at least " +
                                          show_length(least, UnitSystem::metric)},
            Column::length};
    }
    return LineFault{Fault{Code::buries_overlap,
                           "the buries need " + show_length(needed, UnitSystem::metric) +
                               " between the throats and there are " +
                               show_length(std::max<Nanometres>(room, 0), UnitSystem::metric) +
                               "; with these ends the line must be " +
                               show_length(least, UnitSystem::metric) + " or longer"},
                     Column::length};
}

} // namespace libsplice
