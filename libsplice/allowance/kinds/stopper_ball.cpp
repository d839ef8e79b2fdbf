// stopper-ball: a ball or ferrule threaded on, with a knot behind it.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration ball_field{
    "ball",
    "length of the ball or ferrule along the rope, from its bearing face to where the knot seats",
    Dimension::length,
    0.001,
    0.5,
    "none; it must be given",
    true};

constexpr FieldDeclaration bore_field{
    .name = "bore",
    .meaning = "diameter of the hole through the ball, which the knot must not enter",
    .dimension = Dimension::length,
    .lowest = 0.0005,
    .highest = 0.2,
    .default_text = "none; it is not compared"};

enum Field : std::size_t { ball, set, tail, bore };
constexpr std::array fields{ball_field, field::set, field::knot_tail, bore_field};

constexpr std::array steps{
    Step{Action::reeve, {}, "Lead the rope through the hole that the ball stops against."},
    Step{Action::thread, {}, "Thread the ball, its bearing face first."},
    Step{Action::mark,
         {MarkName::ball_face, MarkName::knot_face},
         "Mark the rope where the bearing face comes and where the ball ends: {ball} of rope lies "
         "inside it."},
    Step{Action::tie,
         {MarkName::knot_face},
         "Tie the knot with its face at the ball's end, double overhand unless the rule says "
         "otherwise, {tail} left beyond it."},
    Step{Action::draw_up,
         {},
         "Set the knot, then pull the ball down on it until the knot seats; a countersunk ball "
         "takes the knot in."},
    Step{Action::measure,
         {},
         "Measure from the bearing face, not from the ball's end, with the ball pulled hard on to "
         "its knot."}};

/// The rope runs through the ball and is knotted behind it.
Result<End> work_out(const Request& request) {
    auto stopper = read_stopper(request, {set, tail, {}, bore});
    if (!stopper) {
        Fault fault = stopper.error();
        fault.field = fault.field == field::hole.name ? bore_field.name : fault.field;
        return Unexpected(std::move(fault));
    }
    stopper->ball = from_job(Length(request.fields.at(ball)));
    End allowance = lay_stopper(request, *stopper);
    add_slip_caution(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace

Kind stopper_ball() {
    return {{"stopper-ball", "ball or ferrule held by a knot",
             "bearing face of the ball or ferrule", ropes_and_shock_cord, fields},
            work_out};
}

} // namespace libsplice
