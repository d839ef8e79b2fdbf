// seized-eye: the end laid back along the standing part and bound to it with seizings.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/laid_back_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration tail_field{
    "tail",
    "the whole end beyond the throat, lying along the standing part",
    Dimension::length,
    0.005,
    20.0,
    "the table's multiple of D"};
constexpr FieldDeclaration seizing_field{
    "seizing", "length of one seizing", Dimension::length, 0.001, 2.0, "the table's multiple of D"};

enum Field : std::size_t { eye, pin, tail, seizing };
constexpr std::array fields{field::eye, field::pin, tail_field, seizing_field};

constexpr std::array steps{
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Bend the end round the pin or thimble until near throat and far throat meet: {eye} from "
         "the inside of the crown to the throat, {tail} of tail along the standing part."},
    Step{Action::seize,
         {MarkName::far_throat, MarkName::seizing_end},
         "Rack the turns, because the standing part carries all and the tail nothing. Make line of "
         "about a sixth of the rope's thickness fast to one part by its eye. From the throat lead "
         "it over one part and under the other, to and fro like an 8, for {seizing}. Heave "
         "each turn tight with a spike."},
    Step{Action::seize,
         {MarkName::far_throat, MarkName::seizing_end},
         "Lead riders back round both parts, in the hollows between the turns and one fewer than "
         "those, hauled less hard so that they do not part the turns below."},
    Step{
        Action::seize,
        {MarkName::far_throat, MarkName::seizing_end},
        "Pass two crossing turns between the parts, round the whole seizing, heave them tight, and "
        "finish with a flat knot between the parts."},
    Step{Action::seize,
         {MarkName::lap_end},
         "Put a second seizing of the same length on the tail, ending at the lap-end mark, made in "
         "the same way, and whip the tail's end."},
    Step{Action::load,
         {},
         "Load the eye, haul the crossing turns tight again where they have given, and measure."}};

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto eye_part = need.part(read_eye(request, {eye, pin}, diameter));
    const auto left = need.field_or(tail, FigureId::tail, diameter);
    const auto bound = need.field_or(seizing, FigureId::seizing, diameter);
    if (need.failed()) {
        return need.fault();
    }
    auto end = eye_with_lap(request, eye_part,
                            {left, bound.length, MarkName::seizing_end, ValueName::seizing_m,
                             Span::Form::seized, "tail"});
    if (end) {
        end->steps = steps;
    }
    return end;
}

} // namespace

Kind seized_eye() {
    return {{"seized-eye", "eye, the end bound along the standing part with seizings",
             "inside of the eye's crown", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
