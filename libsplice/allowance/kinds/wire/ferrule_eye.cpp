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
    Step{Action::mark,
         {MarkName::turn_back, MarkName::far_throat},
         "Mark the turn-back and the far throat."},
    Step{Action::cut,
         {},
         "Cut the wire square, without bending or unlaying it, and take off the burr."},
    Step{Action::thread,
         {},
         "Thread the sleeve on the wire before anything else: its metal as the wire asks, plain "
         "copper on galvanised wire, plated copper on stainless, no aluminium on stainless."},
    Step{Action::fit_first,
         {},
         "Lay the wire round the thimble, if there is one, and through what the eye is to hold: "
         "{rope_round_eye} from throat to throat."},
    Step{Action::bring_together,
         {MarkName::turn_back, MarkName::far_throat},
         "Push the end back through the sleeve until the turn-back mark lies at the throat: "
         "{turn_back} is turned back."},
    Step{Action::draw_up,
         {},
         "Push the sleeve up to the eye, leaving what the sleeve's sheet says, and check that a "
         "thimble, if there is one, is held. A second sleeve behind it makes the eye no stronger."},
    Step{Action::press,
         {MarkName::far_throat},
         "Press the sleeve with the dies of its size as its sheet says; where it says nothing of "
         "the order, in the middle first, then next to the eye, then at the far end."},
    Step{Action::measure,
         {},
         "Gauge the pressed sleeve. The wire's end must still stand out of it: a sleeve grows as "
         "it is pressed."},
    Step{Action::load,
         {},
         "Load the eye to {proof} % of the wire's strength for three minutes where that can be "
         "done, then measure it."}};

Result<End> work_out(const Request& request) {
    const auto eye_part =
        read_eye(request, {eye, pin}, request.rope.counting_diameter(), turned_back_words);
    if (!eye_part) {
        return Unexpected(eye_part.error());
    }
    const Length turned = Length(request.fields.at(turn_back));
    End end = turned_back_eye(request, {*eye_part, from_job(turned), Span::Form::pressed});
    if (const auto proof = request.rules.find(FigureId::proof)) {
        end.add(Value{ValueName::proof, proof->value});
    }
    const auto least = request.rules.find(FigureId::usual_turn_back);
    if (least != nullptr && turned < least->length(request.rope.diameter)) {
        end.add(Caution{"a turn-back of {turn_back} is shorter than most sleeves: take it from the "
                        "sleeve's own sheet",
                        least->source});
    }
    if (!end.retained) {
        end.add(Caution{"no source gives the strength of this sleeve on a turned-back loop; a "
                        "Flemish eye's figure is not for it",
                        cited_job, Caution::Weight::refused_for_person});
    }
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
