// crimped-end: shock cord held in a crimped ring, a hook or a clamp.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 3> forms{"ring", "hook", "clamp"};
constexpr FieldDeclaration form_field{
    "form", "what holds the cord", Dimension::choice, 0.0, 0.0, "ring", false, forms};
constexpr FieldDeclaration length_field{"length",
                                        "cord that lies in the fitting, along the cord",
                                        Dimension::length,
                                        0.002,
                                        0.5,
                                        "none: measure the fitting",
                                        true};
constexpr FieldDeclaration end_left_field{"end_left",
                                          "cord left sticking out beyond the fitting",
                                          Dimension::length,
                                          0.0,
                                          0.5,
                                          "the table's multiple of D"};

enum Field : std::size_t { form, length, end_left };
constexpr std::array fields{form_field, length_field, end_left_field};

constexpr std::array steps_ring{
    Step{Action::cut,
         {},
         "Heat-cut the cord with a thin tape round it, and let it cool: rubber that stands out of "
         "its cover will draw back in."},
    Step{Action::thread,
         {},
         "Push the cord through the open ring until {end_left} stands out; the fitting's-mouth "
         "mark, "
         "{@fitting's mouth} from the cut end, lies at its other side."},
    Step{Action::press,
         {MarkName::crimp},
         "Close the ring with its pliers, square to the cord, first in the middle, then at the "
         "edges."},
    Step{Action::measure,
         {},
         "The cord must bulge on both sides. If it turns in the ring, the ring is too large for "
         "it."},
    Step{Action::load,
         {},
         "Pull it to its working stretch by hand three times, then measure it relaxed."}};
constexpr std::array steps_hook{
    Step{Action::cut, {}, "Heat-cut the cord and let it cool."},
    Step{Action::thread,
         {},
         "Push the cord up the hook's barrel until the fitting's-mouth mark, {@fitting's mouth} "
         "from the cut end, lies at the barrel's mouth: {crimp} is inside."},
    Step{Action::tie,
         {},
         "Draw the end out at the hook's other side if it has one, knot or wire it there, and draw "
         "it back in."},
    Step{Action::press,
         {MarkName::crimp},
         "Crimp or tape the barrel's mouth, so that the cord cannot work in it."},
    Step{Action::load,
         {},
         "Pull it to its working stretch by hand three times, then measure it relaxed."}};
constexpr std::array steps_clamp{
    Step{Action::cut, {}, "Heat-cut the cord and let it cool."},
    Step{Action::thread,
         {},
         "Lay the relaxed cord in the open clamp, the fitting's-mouth mark, {@fitting's mouth} "
         "from the cut end, at the edge: {crimp} lies inside."},
    Step{Action::press,
         {MarkName::crimp},
         "Close the two halves until their teeth are in the cover and the screws or rivets are "
         "home."},
    Step{Action::measure,
         {},
         "Look at the cover at the clamp's edge: cut threads mean a clamp too small."},
    Step{Action::load,
         {},
         "Pull it to its working stretch by hand three times, then measure it relaxed."}};

std::span<const Step> steps_for(std::size_t chosen) {
    constexpr std::array all{std::span<const Step>(steps_ring), std::span<const Step>(steps_hook),
                             std::span<const Step>(steps_clamp)};
    return all.at(chosen);
}

Result<End> work_out(const Request& request) {
    const Length cord = request.rope.counting_diameter();
    Figures need(request);
    const auto left = need.field_or(end_left, FigureId::end_left, cord);
    if (need.failed()) {
        return need.fault();
    }
    const SourcedLength held = from_job(Length(request.fields.at(length)));
    End allowance;
    allowance.add(row_of(Item::crimp, held));
    allowance.add(row_of(Item::end_left, left));
    const Nanometres tail_end = add_cutting_loss(allowance, request, Cut::heat);
    const Nanometres far_side = tail_end + to_nanometres(left.length);
    allowance.standing_mark = far_side + to_nanometres(held.length);
    allowance.add(Mark{MarkName::crimp, allowance.standing_mark});
    allowance.add(Value{ValueName::crimp_m, held.length.si()});
    allowance.add(Value{ValueName::end_left_m, left.length.si()});
    allowance.add(
        Span{Span::Form::crimped, far_side, allowance.standing_mark, to_nanometres(cord)});
    add_retained(allowance, request);
    allowance.steps =
        steps_for(request.fields.has(form) ? static_cast<std::size_t>(request.fields.at(form)) : 0);
    return allowance;
}

} // namespace

Kind crimped_end() {
    return {{"crimped-end", "shock cord held in a crimped ring, a hook or a clamp",
             "mouth of the fitting, where the cord comes out of it, relaxed",
             Constructions(Construction::shock_cord), fields},
            work_out};
}

} // namespace libsplice
