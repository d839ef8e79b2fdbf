// double-fisherman: this line's half of a bend of two barrels, each round the other rope.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { stub };
constexpr std::array fields{field::stub};

constexpr std::array steps{
    Step{Action::bring_together,
         {MarkName::knot_face},
         "Lay the two ends side by side, pointing past one another; this sheet counts this line's "
         "end, and the other line its own."},
    Step{Action::tie,
         {MarkName::knot_face},
         "With this end take two turns round the other rope and itself, back towards its own "
         "standing part, and out through both turns."},
    Step{Action::tie,
         {MarkName::knot_face},
         "Do the same with the other end round this rope, of the same hand, so that the two "
         "barrels nest."},
    Step{Action::draw_up,
         {},
         "Pull the standing parts until the barrels meet: the face mark lies where they touch."},
    Step{Action::load, {}, "Leave {stub} on each side and look at it after the first load."}};

Result<Allowance> work_out(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    const auto barrel = request.rules.need(FigureId::knot);
    const auto left = field_or_figure(request, stub, FigureId::stub, rope);
    if (!barrel || !left) {
        return Unexpected(barrel ? left.error() : barrel.error());
    }
    Allowance allowance =
        lay_stopper(request, {{}, from_figure(*barrel, rope), {}, *left, Span::Form::turns, 2.0});
    add_slip_caution(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace

Kind double_fisherman() {
    return {{"double-fisherman", "half of a bend of two barrels; this line's side only",
             "where the two barrels meet", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
