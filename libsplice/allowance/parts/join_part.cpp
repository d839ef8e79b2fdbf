#include "libsplice/allowance/parts/join_part.h"

namespace libsplice {

End buried_side(const Request& request, const BuryPart& bury, Cut cut) {
    End side;
    add_bury_rows(side, bury);
    const Nanometres tail_end = add_cutting_loss(side, request, cut);
    side.standing_mark = tail_end + to_nanometres(bury.tail.length);
    add_taper_marks(side, bury, tail_end);
    side.add(Mark{MarkName::join, side.standing_mark});
    add_bury_marks(side, bury);
    add_bury_facts(side, bury, request, tail_end);
    return side;
}

} // namespace libsplice
