#include "libsplice/allowance/parts/lap_part.h"

#include "libsplice/units/show.h"

namespace libsplice {

Result<End> eye_with_lap(const Request& request, const EyePart& eye, const LapPart& lap,
                         std::string_view tail_field) {
    if (to_nanometres(lap.tail.length) < to_nanometres(lap.held)) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "a tail of " + show_length(lap.tail.length, UnitSystem::metric) +
                                    " is shorter than what holds it; it must be at least " +
                                    show_length(lap.held, UnitSystem::metric),
                                {},
                                std::string(tail_field)});
    }
    End allowance;
    add_eye_rows(allowance, eye);
    allowance.add(row_of(Item::tail, lap.tail));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    const Nanometres near_throat = tail_end + to_nanometres(lap.tail.length);
    add_eye_marks(allowance, eye, near_throat);
    const Nanometres held = to_nanometres(lap.held);
    allowance.add(Mark{lap.held_mark, allowance.standing_mark + held});
    if (to_nanometres(lap.tail.length) > held) {
        allowance.add(
            Mark{MarkName::lap_end, allowance.standing_mark + to_nanometres(lap.tail.length)});
    }
    allowance.bury_reach = to_nanometres(lap.tail.length);
    allowance.add(Value{ValueName::tail_m, lap.tail.length.si()});
    allowance.add(Value{lap.held_value, lap.held.si()});
    const Nanometres width = to_nanometres(eye.rope);
    if (near_throat - held > tail_end) {
        allowance.add(Span{Span::Form::straight, tail_end, near_throat - held, width});
    }
    allowance.add(Span{lap.holds, near_throat - held, near_throat, width});
    add_eye_facts(allowance, eye, request, near_throat);
    add_retained(allowance, request);
    return allowance;
}

void add_untested_caution(End& allowance, const Request& request) {
    if (request.rules.find(FigureId::retained) == nullptr) {
        allowance.add(Caution{
            "no source says what this holds: load a test piece to twice what the line will carry",
            cited_job, Caution::Weight::refused_for_person});
    }
}

} // namespace libsplice
