// Loads of sheets, blocks, tackles and of a boat that is held upright by its crew.
#include "libsplice/mechanics/loads/loads.h"

#include <cmath>

namespace libsplice {

namespace {

/// The pull of a square metre, in newtons; `at_a_knot` in kgf.
double pull_of_square_metre(Speed wind, double at_a_knot) {
    const double knots = wind.si() / metres_per_second_per_knot;
    return at_a_knot * newtons_per_kgf * knots * knots;
}

} // namespace

Force sheet_load(Area sail, Speed wind, double pressure) {
    return newtons(pull_of_square_metre(wind, pressure) * sail.si());
}

std::optional<Force> mainsheet_load(const MainsailShape& sail, Speed wind, double pressure) {
    const double foot = sail.foot.si();
    const double luff = sail.luff.si();
    const double to_sheet = foot - sail.from_end.si();
    if (!(to_sheet > 0.0)) {
        return std::nullopt;
    }
    const double area_by_arm = foot * foot * luff * luff / (std::hypot(luff, foot) * to_sheet);
    return newtons(pull_of_square_metre(wind, pressure) * area_by_arm);
}

Force block_load(Force pull, Angle turn) {
    return 2.0 * std::sin(turn.si() / 2.0) * pull;
}

Force tackle_pull(Force load, int parts, int sheaves, double loss) {
    return load * (1.0 + loss * sheaves) / parts;
}

double tackle_advantage(int parts, double efficiency) {
    return efficiency * (1.0 - std::pow(efficiency, parts)) / (1.0 - efficiency);
}

Moment righting_moment(const TwoHulls& boat) {
    const double metre_kilograms =
        boat.boat.si() * boat.beam.si() / 2.0 + boat.crew.si() * (boat.beam + boat.outside).si();
    return Moment(metre_kilograms * newtons_per_kgf);
}

Force pull_at(Moment moment, Length arm) {
    return newtons(moment.si() / arm.si());
}

} // namespace libsplice
