// bare and whipped: ends that are only cut, or cut and whipped.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration length_field{"length",
                                        "length of the whipping along the rope",
                                        Dimension::length,
                                        0.002,
                                        0.5,
                                        "the table's multiple of D"};
enum WhippedField : std::size_t { whipping_length };
constexpr std::array whipped_fields{length_field};

constexpr std::array<std::string_view, 1> bare_steps{
    "Cut at the bearing-point mark, square, through a turn of tape or with heat as the fibre "
    "allows."};
constexpr std::array<std::string_view, 3> whipped_steps{
    "Cut at the bearing-point mark, square, through a turn of tape.",
    "Whip the end from the whipping mark outwards: {whipping} of tight turns laid away from the "
    "end, the "
    "thread's tails stitched through the rope.",
    "Seal the fibres' ends only where the fibre melts clean and the end carries no load.",
};

/// The end itself: what the cut costs, and the mark where it is made.
Allowance plain_end(const Request& request) {
    Allowance allowance;
    allowance.made = false;
    const Nanometres lost = add_cutting_loss(allowance, request, usual_cut(request.rope));
    allowance.add(Mark{MarkName::bearing_point, lost});
    allowance.standing_mark = lost;
    return allowance;
}

Result<Allowance> work_out_bare(const Request& request) {
    Allowance allowance = plain_end(request);
    allowance.steps = bare_steps;
    return allowance;
}

/// A whipping uses up no rope, but needs straight rope to lie on.
Result<Allowance> work_out_whipped(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    const auto length = field_or_figure(request, whipping_length, FigureId::whipping, rope);
    const auto offset = request.rules.need(FigureId::whipping_offset);
    if (!length || !offset) {
        return Unexpected(length ? offset.error() : length.error());
    }
    Allowance allowance = plain_end(request);
    const Nanometres start = allowance.standing_mark + to_nanometres(offset->length(rope));
    const Nanometres end = start + to_nanometres(length->length);
    allowance.add(Mark{MarkName::whipping, end});
    allowance.add(Value{ValueName::whipping_m, length->length.si()});
    allowance.add(Span{Span::Form::whipped, start, end, to_nanometres(rope)});
    allowance.steps = whipped_steps;
    return allowance;
}

constexpr std::string_view cut_end = "the cut end itself";

} // namespace

Kind bare() {
    return {{"bare", "an end that is only cut", cut_end, {}, {}, true}, work_out_bare};
}

Kind whipped() {
    return {{"whipped", "an end bound with thread", cut_end,
             Constructions(Construction::laid_3, Construction::plait_8, Construction::braid_12,
                           Construction::double_braid, Construction::core_dependent,
                           Construction::parallel_core, Construction::solid_braid,
                           Construction::shock_cord),
             whipped_fields, true},
            work_out_whipped};
}

} // namespace libsplice
