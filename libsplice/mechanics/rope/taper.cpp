// Drops pairs of strands at equal steps along the tail.
#include "libsplice/mechanics/rope/taper.h"

#include <gsl/assert>

namespace libsplice {

bool TaperSchedule::ends_in_more_than_a_pair() const {
    return static_cast<int>(drops.size()) < strands / 2 - 1;
}

TaperSchedule taper_schedule(int strands, int pairs, Length taper, Length diameter,
                             double packing) {
    Expects(strands >= 4 && strands <= most_strands && strands % 2 == 0);
    Expects(pairs >= 0 && pairs < strands / 2);
    TaperSchedule schedule;
    schedule.strands = strands;
    schedule.spacing = taper / (pairs + 1);
    const auto outside = [&](double section) {
        return diameter_over_bury(diameter, packing * section);
    };
    for (int dropped = 1; dropped <= pairs; ++dropped) {
        PairDrop drop;
        drop.from_end = schedule.spacing * (pairs + 1 - dropped);
        drop.strands_left = strands - 2 * dropped;
        drop.section = static_cast<double>(drop.strands_left) / strands;
        drop.outside = outside(drop.section);
        drop.step = outside(schedule.end_section) - drop.outside;
        schedule.drops.push_back(drop);
        schedule.end_section = drop.section;
    }
    schedule.end_step = outside(schedule.end_section) - diameter;
    return schedule;
}

BuriedTail stepped_tail(Length tail, const TaperSchedule& schedule) {
    const auto steps = static_cast<double>(schedule.drops.size());
    BuriedTail parts;
    parts.push_back({tail - schedule.spacing * steps, 1.0, 1.0});
    for (const PairDrop& drop : schedule.drops) {
        parts.push_back({schedule.spacing, drop.section, drop.section});
    }
    return parts;
}

} // namespace libsplice
