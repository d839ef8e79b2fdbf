// bowline: a fixed loop knot whose tail lies back inside the loop.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/eye_part.h"
#include "libsplice/allowance/parts.h"
#include "libsplice/allowance/stopper_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration loop_field{
    "loop",
    "inside of the loop's crown (the bearing point) to the knot, loaded on its pin",
    Dimension::length,
    0.005,
    10.0,
    "3 times the pin, at least 8 D"};

enum Field : std::size_t { loop, pin, stub };
constexpr std::array fields{loop_field, field::pin, field::stub};

constexpr std::array<std::string_view, 5> steps{
    "Put on the line and through the fitting all that has to be there before the loop is closed.",
    "At the standing-side mark twist a small turn into the standing part, its end side on top.",
    "Bring the end up through the turn from behind, round the back of the standing part, and down "
    "through "
    "the turn again, so that it lies inside the loop.",
    "Draw up standing part against both legs of the loop. The loop measures {eye} from its crown "
    "to the "
    "knot; {stub} of tail lies inside it.",
    "Load it, then measure the loop again: a bowline settles.",
};

Result<Allowance> work_out(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    auto loop_part = read_eye(request, {loop, pin}, rope);
    if (!loop_part) {
        auto fault = loop_part.error();
        fault.field = "loop";
        return Unexpected(std::move(fault));
    }
    const auto knot = request.rules.need(FigureId::beyond_loop);
    const auto tail = field_or_figure(request, stub, FigureId::stub, rope);
    if (!knot || !tail) {
        return Unexpected(knot ? tail.error() : knot.error());
    }
    const auto in_knot = from_figure(*knot, rope);

    Allowance allowance;
    add_eye_rows(allowance, *loop_part);
    for (Row& row : allowance.rows) {
        row.item = row.item == Item::eye_legs            ? Item::loop_legs
                   : row.item == Item::throat_to_bearing ? Item::knot_to_bearing
                                                         : row.item;
    }
    allowance.add(row_of(Item::knot, in_knot, Group::hand));
    allowance.add(row_of(Item::stub, *tail));
    const Nanometres tail_end = add_cutting_loss(allowance, request, usual_cut(request.rope));
    // The knot's rope lies on both sides of the loop; the marks put it all on the tail's side, so
    // that the standing-side mark is where the turn is made and the loop comes out at its length.
    const Nanometres near = tail_end + to_nanometres(tail->length) + to_nanometres(in_knot.length);
    add_eye_marks(allowance, *loop_part, near);
    allowance.marks.begin()[0].name = MarkName::loop_near;
    allowance.marks.begin()[2].name = MarkName::loop_far;
    allowance.add(Value{ValueName::knot_m, in_knot.length.si()});
    allowance.add(Value{ValueName::stub_m, tail->length.si()});
    add_eye_facts(allowance, *loop_part, request, near);
    allowance.add(
        Span{Span::Form::knot, tail_end + to_nanometres(tail->length), near, to_nanometres(rope)});
    add_slip_caution(allowance, request);
    allowance.steps = steps;
    add_retained(allowance, request);
    allowance.steps = steps;
    return allowance;
}

} // namespace

Kind bowline() {
    return {{"bowline", "fixed loop knot", "inside of the loop's crown, loaded on its pin",
             Constructions(Construction::laid_3, Construction::plait_8, Construction::braid_12,
                           Construction::double_braid, Construction::core_dependent,
                           Construction::parallel_core, Construction::solid_braid),
             fields},
            work_out};
}

} // namespace libsplice
