// An eye and its buried tail, laid out on one end; a tail that is led into another rope's end.
#include "libsplice/allowance/parts/buried_eye_part.h"

namespace libsplice {

void add_stitching(End& end, const Request& request, Length diameter) {
    const auto start = request.rules.find(FigureId::stitch_start);
    const auto length = request.rules.find(FigureId::stitch_length);
    if (start == nullptr || length == nullptr) {
        return;
    }
    const Length from = start->length(diameter);
    end.stitching = StitchFacts{from, from + length->length(diameter)};
}

Result<End> eye_with_bury(const Request& request, EyeFields eye_fields, BuryFields bury_fields,
                          Length diameter) {
    Figures need(request);
    const auto eye = need.part(read_eye(request, eye_fields, diameter));
    const auto bury = need.part(read_bury(request, bury_fields, host_of(diameter)));
    if (need.failed()) {
        return need.fault();
    }
    return eye_with_bury(request, eye, bury);
}

End eye_with_bury(const Request& request, const EyePart& eye, const BuryPart& bury, Length entry) {
    End end;
    add_eye_rows(end, eye);
    add_bury_rows(end, bury);
    const Nanometres tail_end = add_cutting_loss(end, request, Cut::shears);
    const Nanometres near_throat = tail_end + to_nanometres(bury.facts.tail);
    const Nanometres entered = to_nanometres(entry);
    const Nanometres far_throat = near_throat + to_nanometres(eye.facts.rope_round);
    lay_bury(end, bury, request, {tail_end, far_throat + entered});
    if (entered != 0) {
        end.add(Mark{MarkName::core_entry, far_throat + entered});
        end.bury->entry = entry;
        end.bury_reach += entered;
        end.fid_reach += entered;
    }
    lay_eye(end, eye, request, near_throat);
    add_stitching(end, request, bury.host.diameter);
    add_grip(end, bury, request);
    add_retained(end, request);
    return end;
}

Result<End> locked_eye_with_bury(const Request& request, EyeFields eye_fields,
                                 BuryFields bury_fields) {
    const Length diameter = request.rope.counting_diameter();
    auto end = eye_with_bury(request, eye_fields, bury_fields, diameter);
    if (!end) {
        return end;
    }
    add_crossing(*end, 2.0, end->standing_mark - to_nanometres(end->eye->rope_round), diameter);
    // An eye that is loaded before it is measured has closed up by then.
    const auto figure = request.rules.find(FigureId::crossing);
    if (figure != nullptr && !is_settled(request, bury_fields.settled)) {
        end->add(
            row_of(Item::crossing, times(-1.0, from_figure(*figure, diameter)), Group::settling));
    }
    return end;
}

End buried_side(const Request& request, const BuryPart& bury, MarkName meets) {
    End side;
    add_bury_rows(side, bury);
    const Nanometres tail_end = add_cutting_loss(side, request, Cut::shears);
    side.standing_mark = tail_end + to_nanometres(bury.facts.tail);
    side.add(Mark{meets, side.standing_mark});
    lay_bury(side, bury, request, {tail_end, side.standing_mark});
    return side;
}

} // namespace libsplice
