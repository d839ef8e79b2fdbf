#include "libsplice/allowance/parts/buried_eye_part.h"

#include "libsplice/allowance/parts/grip_part.h"

namespace libsplice {

void add_stitching(End& allowance, const Request& request, Length rope) {
    const auto start = request.rules.find(FigureId::stitch_start);
    const auto length = request.rules.find(FigureId::stitch_length);
    if (start == nullptr || length == nullptr) {
        return;
    }
    const Length from = start->length(rope);
    allowance.add(Value{ValueName::stitch_start_m, from.si()});
    allowance.add(Value{ValueName::stitch_end_m, (from + length->length(rope)).si()});
}

Result<End> eye_with_bury(const Request& request, EyeFields eye_fields, BuryFields bury_fields,
                          Length rope) {
    const auto eye = read_eye(request, eye_fields, rope);
    if (!eye) {
        return Unexpected(eye.error());
    }
    const auto bury = read_bury(request, bury_fields, rope);
    if (!bury) {
        return Unexpected(bury.error());
    }
    return eye_with_bury(request, *eye, *bury);
}

End eye_with_bury(const Request& request, const EyePart& eye, const BuryPart& bury) {
    End allowance;
    add_eye_rows(allowance, eye);
    add_bury_rows(allowance, bury);
    const Nanometres tail_end = add_cutting_loss(allowance, request, Cut::shears);
    const Nanometres near_throat = tail_end + to_nanometres(bury.tail.length);
    add_taper_marks(allowance, bury, tail_end);
    add_eye_marks(allowance, eye, near_throat);
    add_bury_marks(allowance, bury);
    add_bury_facts(allowance, bury, request, tail_end);
    add_eye_facts(allowance, eye, request, near_throat);
    add_stitching(allowance, request, bury.rope);
    add_grip(allowance, bury, request);
    add_retained(allowance, request);
    return allowance;
}

} // namespace libsplice
