// Loads of sheets, blocks, tackles and of a boat that is held upright by its crew.
#include "libsplice/mechanics/loads/loads.h"

#include <cmath>

namespace libsplice {

namespace {

/// kgf on a square metre at one knot of apparent wind.
constexpr double pressure_at_a_knot = 0.02104;
/// What a sheave costs, as a share of the load.
constexpr double lost_at_a_sheave = 0.1;
/// How far outside the hull the crew's weight hangs.
constexpr Length crew_outside = metres(1.0);

/// The wind's force on an area of one square metre, in newtons.
double pressure(Speed wind) {
    const double knots = wind.si() / metres_per_second_per_knot;
    return pressure_at_a_knot * newtons_per_kgf * knots * knots;
}

} // namespace

Force sheet_load(Area sail, Speed wind) {
    return newtons(pressure(wind) * sail.si());
}

std::optional<Force> mainsheet_load(const MainsailShape& sail, Speed wind) {
    const double foot = sail.foot.si();
    const double luff = sail.luff.si();
    const double to_sheet = foot - sail.from_end.si();
    if (!(to_sheet > 0.0)) {
        return std::nullopt;
    }
    const double area_by_arm = foot * foot * luff * luff / (std::hypot(luff, foot) * to_sheet);
    return newtons(pressure(wind) * area_by_arm);
}

Force block_load(Force pull, Angle turn) {
    return 2.0 * std::sin(turn.si() / 2.0) * pull;
}

Force tackle_pull(Force load, int parts, int sheaves) {
    return load * (1.0 + lost_at_a_sheave * sheaves) / parts;
}

double tackle_advantage(int parts, double efficiency) {
    return efficiency * (1.0 - std::pow(efficiency, parts)) / (1.0 - efficiency);
}

Moment righting_moment(const TwoHulls& boat) {
    const double metre_kilograms =
        boat.boat.si() * boat.beam.si() / 2.0 + boat.crew.si() * (boat.beam + crew_outside).si();
    return Moment(metre_kilograms * newtons_per_kgf);
}

Force pull_at(Moment moment, Length arm) {
    return newtons(moment.si() / arm.si());
}

} // namespace libsplice
