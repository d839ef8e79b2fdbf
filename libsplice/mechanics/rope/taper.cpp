// Drops pairs of strands at equal steps along the tail.
#include "libsplice/mechanics/rope/taper.h"

#include "libsplice/mechanics/rope/braid.h"

#include <gsl/assert>

namespace libsplice {

double TaperSchedule::even_end() const {
    const int droppable = strands / 2 - 1;
    return 1.0 - static_cast<double>(drops.size()) / droppable;
}

bool TaperSchedule::ends_in_more_than_a_pair() const {
    return static_cast<int>(drops.size()) < strands / 2 - 1;
}

TaperSchedule taper_schedule(int strands, int pairs, Length taper, Length rope, double packing) {
    Expects(strands >= 4 && strands <= most_strands && strands % 2 == 0);
    Expects(pairs >= 0 && pairs < strands / 2);
    TaperSchedule schedule;
    schedule.strands = strands;
    schedule.spacing = taper / (pairs + 1);
    const auto outside = [&](double section) {
        return diameter_over_bury(rope, packing * section);
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
    schedule.end_step = outside(schedule.end_section) - rope;
    return schedule;
}

} // namespace libsplice
