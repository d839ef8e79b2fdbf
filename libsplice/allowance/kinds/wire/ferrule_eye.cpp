// ferrule-eye: wire turned back round a thimble into a sleeve that is pressed over both parts.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/laid_back_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration turn_back_field{
    "turn_back",
    "wire turned back from the throat: the sleeve's length before pressing and what its own sheet "
    "asks to stick out",
    Dimension::length,
    0.002,
    2.0,
    "none: from the sleeve's own sheet",
    true};

enum Field : std::size_t { eye, pin, turn_back };
constexpr std::array fields{field::eye, field::pin, turn_back_field};

constexpr std::array steps{
    Step{Action::cut,
         {},
         "Cut the wire square, without bending or unlaying it, and take off the burr."},
    Step{Action::thread, {}, "Thread the sleeve on the wire before anything else."},
    Step{Action::fit_first,
         {},
         "Lay the wire round the thimble: {rope_round_eye} from throat to throat."},
    Step{Action::bring_together,
         {MarkName::turn_back, MarkName::far_throat},
         "Push the end back through the sleeve until the turn-back mark lies at the throat: "
         "{turn_back} is turned back."},
    Step{Action::draw_up,
         {},
         "Push the sleeve up to the thimble's point, leaving what the sleeve's sheet says, and "
         "check that the thimble is held."},
    Step{
        Action::press,
        {MarkName::far_throat},
        "Press the sleeve with the dies of its size, in the order and as often as its sheet says."},
    Step{Action::load,
         {},
         "Gauge the pressed sleeve as the sheet says, see that the end still shows, then load the "
         "eye and measure it."}};

Result<End> work_out(const Request& request) {
    const auto eye_part = read_eye(request, {eye, pin}, request.rope.diameter, turned_back_words);
    if (!eye_part) {
        return Unexpected(eye_part.error());
    }
    End end = turned_back_eye(
        request, {*eye_part, from_job(Length(request.fields.at(turn_back))), Span::Form::pressed});
    end.steps = steps;
    return end;
}

} // namespace

Kind ferrule_eye() {
    return {{"ferrule-eye", "wire turned back into a pressed sleeve", "inside of the eye's crown",
             Constructions(Construction::wire), fields},
            work_out};
}

} // namespace libsplice
