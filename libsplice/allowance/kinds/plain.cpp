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

constexpr std::array bare_steps{Step{Action::cut,
                                     {MarkName::bearing_point},
                                     "Cut at the bearing-point mark, square, through a turn of "
                                     "tape or with heat as the fibre allows."}};
constexpr std::array whipped_steps{
    Step{Action::cut,
         {MarkName::bearing_point},
         "Cut at the bearing-point mark, square, through a turn of tape."},
    Step{Action::whip,
         {MarkName::whipping},
         "Whip the end from the whipping mark outwards: {whipping} of tight turns laid away from "
         "the end, the thread's tails stitched through the rope."},
    Step{Action::seal,
         {MarkName::bearing_point},
         "Seal the fibres' ends only where the fibre melts clean and the end carries no load."}};

constexpr std::array sealed_steps{
    Step{Action::cut,
         {MarkName::bearing_point},
         "Cut at the bearing-point mark, square, with a hot knife or a hot wire."},
    Step{Action::seal,
         {MarkName::bearing_point},
         "Melt the whole cut face and no more, and let it cool without touching it."},
    Step{Action::measure,
         {},
         "See that no yarn is loose and no edge is sharp; a sharp bead cuts hands and the rope "
         "next to it."}};
constexpr std::array sealed_cover_steps{
    Step{Action::cut,
         {MarkName::bearing_point},
         "Cut at the bearing-point mark, square, through a turn of tape."},
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
    allowance.steps = bare_steps;
    return allowance;
}

/// A whipping uses up no rope, but needs straight rope to lie on.
Result<End> work_out_whipped(const Request& request) {
    const Length rope = request.rope.counting_diameter();
    Figures need(request);
    const Length length = need.field_or(whipping_length, FigureId::whipping, rope).length;
    const Length offset = need.figure(FigureId::whipping_offset).length(rope);
    if (need.failed()) {
        return need.fault();
    }
    End allowance = plain_end(request, usual_cut(request.rope));
    const Nanometres start = allowance.standing_mark + to_nanometres(offset);
    const Nanometres end = start + to_nanometres(length);
    allowance.add(Mark{MarkName::whipping, end});
    allowance.add(Value{ValueName::whipping_m, length.si()});
    allowance.add(Span{Span::Form::whipped, start, end, to_nanometres(rope)});
    allowance.steps = whipped_steps;
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
    const Length rope = request.rope.counting_diameter();
    Figures need(request);
    const Length back = need.field_or(core_back, FigureId::core_back, rope).length;
    if (need.failed()) {
        return need.fault();
    }
    const Nanometres end_of_core = allowance.standing_mark + to_nanometres(back);
    allowance.add(Mark{MarkName::core_end, end_of_core});
    allowance.add(Value{ValueName::core_back_m, back.si()});
    allowance.add(
        Span{Span::Form::covered, allowance.standing_mark, end_of_core, to_nanometres(rope)});
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
