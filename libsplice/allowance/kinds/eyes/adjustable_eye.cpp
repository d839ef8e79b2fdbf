// adjustable-eye: the tail runs through the host and out of it, slides there, and ends in a
// stopper.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration bury_field{
    "bury",
    "tail that lies inside the host, from the throat to where it comes out",
    Dimension::length,
    0.001,
    20.0,
    "the rule's tail"};
constexpr FieldDeclaration travel_field{
    "travel",
    "how much longer the eye can be let out than the length it is measured at",
    Dimension::length,
    0.0,
    10.0,
    "0 mm: measured at its longest, the stopper against the host"};

constexpr FieldDeclaration end_left_field{.name = "end_left",
                                          .meaning = "what is left sticking out behind the stopper",
                                          .dimension = Dimension::length,
                                          .lowest = 0.0,
                                          .highest = 5.0,
                                          .default_text = "the table's multiple of D for the rope"};

enum Field : std::size_t { eye, pin, bury, travel, set, end_left };
constexpr std::array fields{field::eye,   field::pin, bury_field,
                            travel_field, field::set, end_left_field};

constexpr std::array steps{
    Step{Action::mark,
         {},
         "Put the marks on at the pull to mark at. Thin nothing: the tail carries "
         "load over its whole length inside."},
    Step{Action::tape, {}, "Tape the end to a point."},
    Step{Action::fit_first, {}, "Put the pin, ring or hook in now if it cannot be hung later."},
    Step{Action::lead_in,
         {MarkName::far_throat, MarkName::exit},
         "Enter the host at the far throat, lead the tail {bury} along inside it and bring it out "
         "at the exit mark."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Draw it through until near throat and far throat meet and the eye is {eye}."},
    Step{Action::whip,
         {MarkName::exit},
         "At the exit whip the host with a few passes through its strands, not through the tail: "
         "the hole must neither run nor pinch."},
    Step{Action::tie,
         {MarkName::knot_face},
         "Tie a figure-eight in the tail with its face on the knot-face mark and {end_left} beyond "
         "it. With the eye let out as far as it goes it must not go into the host; if the host is "
         "open there, put a bead in front of it."},
    Step{Action::load,
         {},
         "Work the eye: push the host together and it slides; pull on the line and it holds. If it "
         "creeps under load, lengthen the bury."},
    Step{Action::measure, {}, "Load it, then measure the eye again."}};

Result<End> work_out(const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    BuryFields bury_fields{bury, {}, {}, {}};
    bury_fields.tail_name = "bury";
    const auto inside = need.part(read_bury(request, bury_fields, host_of(diameter)));
    const auto eye_part = need.part(read_eye(request, {eye, pin}, diameter));
    auto end =
        need.part(lay_stopper_knot(request, {set, end_left, left_behind_stopper}, 4.0, steps));
    if (need.failed()) {
        return need.fault();
    }
    // Letting the eye out by a length draws twice that through the host; it waits between stopper
    // and host.
    const Length reach = request.fields.length(travel).value_or(Length());
    end.add(Value{ValueName::travel_m, reach.si()});
    if (reach > Length()) {
        SourcedLength waits = from_job(reach * 2.0);
        waits.working = {FormulaId::twice_travel, {reach.si()}};
        end.add(row_of(Item::travel, waits));
    }
    const Nanometres leaves_host = end.standing_mark + to_nanometres(reach * 2.0);
    const Nanometres near_throat = leaves_host + to_nanometres(inside.facts.tail);
    add_eye_rows(end, eye_part);
    add_bury_rows(end, inside);
    lay_bury(end, inside, request,
             {leaves_host, near_throat + to_nanometres(eye_part.facts.rope_round)});
    lay_eye(end, eye_part, request, near_throat);
    add_grip(end, inside, request);
    return end;
}

} // namespace

Kind adjustable_eye() {
    return {{.name = "adjustable-eye",
             .title = "eye whose tail slides through the host, a stopper behind",
             .datum = "inside of the eye's crown",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
