// bare, whipped and heat-sealed: ends that are only cut, or cut and kept from fraying.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration length_field{"length",
                                        "length of the whipping along the rope",
                                        Dimension::length,
                                        0.002,
                                        0.5,
                                        "the table's multiple of D"};
constexpr FieldDeclaration core_back_field{"core_back",
                                           "core cut back under a cover that is sealed over it",
                                           Dimension::length,
                                           0.001,
                                           0.2,
                                           "the table's multiple of D"};
enum SealedField : std::size_t { core_back };
constexpr std::array sealed_fields{core_back_field};

enum WhippedField : std::size_t { whipping_length };
constexpr std::array whipped_fields{length_field};

// A plain end has one place where it is cut at the bench: its own end, whatever is kept there for
// the last cut aboard.
constexpr Step cut_with_heat{
    Action::cut, {}, "Cut the end square with a hot knife, through a turn of tape."};
constexpr Step cut_with_shears{
    Action::cut,
    {},
    "Cut the end square with sharp shears, through a turn of tape. Heat is not for this fibre."};
constexpr Step cut_under_cover{
    Action::cut,
    {},
    "Cut the end square through a turn of tape. Heat is for the cover alone: keep it off the "
    "core."};
constexpr Step cut_wire{Action::cut, {}, "Cut the wire square and take off the burr."};

constexpr std::array bare_with_heat{cut_with_heat};
constexpr std::array bare_with_shears{cut_with_shears};
constexpr std::array bare_under_cover{cut_under_cover};
constexpr std::array bare_wire{cut_wire};

constexpr Step whip_laid{
    Action::whip,
    {MarkName::whipping},
    "Whip with needle and palm, from the whipping mark towards the end and against the rope's lay: "
    "{whipping} of tight turns, then the thread over them along each groove between the strands, "
    "and through the rope each time."};
constexpr Step whip_braid{
    Action::whip,
    {MarkName::whipping},
    "Whip from the whipping mark towards the end: {whipping} of tight turns. Stitch through the "
    "rope at both edges, with the thread over the turns at three places round it."};

constexpr std::array whipped_laid_with_heat{cut_with_heat, whip_laid};
constexpr std::array whipped_laid_with_shears{cut_with_shears, whip_laid};
constexpr std::array whipped_braid_with_heat{cut_with_heat, whip_braid};
constexpr std::array whipped_braid_with_shears{cut_with_shears, whip_braid};
constexpr std::array whipped_braid_under_cover{cut_under_cover, whip_braid};

constexpr std::array sealed_steps{
    Step{Action::cut, {}, "Cut the end square with a hot knife or a hot wire, in moving air."},
    Step{Action::seal,
         {MarkName::bearing_point},
         "Melt the whole cut face and no more, and let it cool without touching it: what drips "
         "burns through skin."},
    Step{Action::measure,
         {},
         "See that no yarn is loose and no edge is sharp; a sharp bead cuts hands and the rope "
         "next to it."}};
constexpr std::array sealed_cover_steps{
    Step{Action::cut, {}, "Cut the end square, through a turn of tape."},
    Step{Action::cut,
         {MarkName::core_end},
         "Draw the core's end out a little, cut {core_back} of it off with shears, and let it slip "
         "back inside: heat must not reach it.",
         Part::core},
    Step{Action::seal,
         {MarkName::bearing_point},
         "Melt the cover's end together over the hollow that is left."},
    Step{Action::seal,
         {MarkName::bearing_point},
         "Roll it on a cool plate while it is soft, so that it ends no thicker than the rope."}};

/// What the rope is cut with, and what is done with the cut face.
enum class CutFor : std::uint8_t { heat, shears, heat_on_cover, wire };
CutFor cut_for(const Rope& rope) {
    if (rope.construction == Construction::wire) {
        return CutFor::wire;
    }
    if (melts_clean(rope.fibre)) {
        return CutFor::heat;
    }
    return has_cover(rope.construction) ? CutFor::heat_on_cover : CutFor::shears;
}

Steps steps_of_bare(const Rope& rope) {
    switch (cut_for(rope)) {
    case CutFor::heat:
        return bare_with_heat;
    case CutFor::shears:
        return bare_with_shears;
    case CutFor::heat_on_cover:
        return bare_under_cover;
    case CutFor::wire:
        break;
    }
    return bare_wire;
}

Steps steps_of_whipped(const Rope& rope) {
    const bool laid = rope.construction == Construction::three_strand;
    switch (cut_for(rope)) {
    case CutFor::heat:
        return laid ? Steps(whipped_laid_with_heat) : Steps(whipped_braid_with_heat);
    case CutFor::heat_on_cover:
        return whipped_braid_under_cover;
    case CutFor::shears:
    case CutFor::wire: // not whipped
        break;
    }
    return laid ? Steps(whipped_laid_with_shears) : Steps(whipped_braid_with_shears);
}

/// The end itself: what the cut costs, and the mark where it is made.
End plain_end(const Request& request, Cut cut) {
    End allowance;
    allowance.made = false;
    const Nanometres lost = add_cutting_loss(allowance, request, cut);
    allowance.add(Mark{MarkName::bearing_point, lost});
    allowance.standing_mark = lost;
    return allowance;
}

Result<End> work_out_bare(const Request& request) {
    End allowance = plain_end(request, usual_cut(request.rope));
    allowance.steps = steps_of_bare(request.rope);
    return allowance;
}

/// A whipping uses up no rope, but needs straight rope to lie on.
Result<End> work_out_whipped(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const Length length = need.field_or(whipping_length, FigureId::whipping, diameter).length;
    const Length offset = need.figure(FigureId::whipping_offset).length(diameter);
    if (need.failed()) {
        return need.fault();
    }
    End allowance = plain_end(request, usual_cut(request.rope));
    const Nanometres start = allowance.standing_mark + to_nanometres(offset);
    const Nanometres end = start + to_nanometres(length);
    allowance.add(Mark{MarkName::whipping, end});
    allowance.add(Value{ValueName::whipping_m, length.si()});
    allowance.add(Span{Span::Form::whipped, start, end, to_nanometres(diameter)});
    allowance.steps = steps_of_whipped(request.rope);
    return allowance;
}

/// Heat is for fibres that melt clean. A cover may be sealed over a core that does not, where the
/// core is cut back.
Result<End> work_out_heat_sealed(const Request& request) {
    const bool covered = has_cover(request.rope.construction);
    const bool spoils = !melts_clean(request.rope.fibre);
    if (spoils && !covered) {
        return Unexpected(
            Fault{Code::wrong_construction,
                  std::string(name_of(request.rope.fibre)) +
                      " shrinks back or chars in heat and cannot be sealed; whip the end instead"});
    }
    if (request.fields.has(core_back) && !covered) {
        return Unexpected(Fault{Code::unknown_field,
                                "core_back is for rope whose cover is sealed over a core",
                                {},
                                "core_back"});
    }
    End allowance = plain_end(request, Cut::heat);
    // The melted end is drawn a diameter long.
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    allowance.add(
        Span{Span::Form::sealed, allowance.standing_mark, allowance.standing_mark + width, width});
    allowance.steps = sealed_steps;
    if (!spoils && !request.fields.has(core_back)) {
        return allowance;
    }
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const Length back = need.field_or(core_back, FigureId::core_back, diameter).length;
    if (need.failed()) {
        return need.fault();
    }
    const Nanometres end_of_core = allowance.standing_mark + to_nanometres(back);
    allowance.add(Mark{MarkName::core_end, end_of_core});
    allowance.add(Value{ValueName::core_back_m, back.si()});
    allowance.add(
        Span{Span::Form::covered, allowance.standing_mark, end_of_core, to_nanometres(diameter)});
    allowance.steps = sealed_cover_steps;
    return allowance;
}

constexpr std::string_view cut_end = "the cut end itself";

} // namespace

Kind bare() {
    return {{"bare", "an end that is only cut", cut_end, {}, {}, Reach::plain}, work_out_bare};
}

Kind heat_sealed() {
    return {{"heat-sealed", "an end whose fibres are melted together", cut_end,
             ropes_and_shock_cord, sealed_fields, Reach::plain},
            work_out_heat_sealed};
}

Kind whipped() {
    return {{"whipped", "an end bound with thread", cut_end, ropes_and_shock_cord, whipped_fields,
             Reach::plain},
            work_out_whipped};
}

} // namespace libsplice
