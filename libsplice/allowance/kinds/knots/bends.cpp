// The bends of two knots that draw up against one another: one row each, for this line's knot.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { tail };
constexpr std::array fields{field::knot_tail};

/// This line's half of a bend: what it is, how it lies, and how it is tied.
struct Bend {
    std::string_view name;
    std::string_view title;
    std::string_view datum;
    Span::Form form = Span::Form::turns;
    Steps steps;
};

constexpr std::array double_fisherman{
    Step{Action::plain,
         {MarkName::knot_face},
         "Lay the two ends side by side, pointing past one another; this sheet counts this line's "
         "end, and the other line its own."},
    Step{Action::tie,
         {MarkName::knot_face},
         "Wind this end round the other rope and itself, back towards its own standing part, and "
         "out through all its turns. Turns to wind: {turns}."},
    Step{Action::tie,
         {MarkName::knot_face},
         "Do the same with the other end round this rope, turned the same way, so that the two "
         "barrels nest."},
    Step{Action::draw_up,
         {},
         "Pull the standing parts until the barrels meet: the face mark lies where they touch."},
    Step{Action::load, {}, "Leave {tail} on each side and look at it after the first load."}};

constexpr std::array knots{
    Bend{.name = "double-fisherman",
         .title = "half of a bend of two barrels; this line's side only",
         .datum = "where the two barrels meet",
         .form = Span::Form::turns,
         .steps = double_fisherman},
};

Result<End> work_out(const Bend& bend, const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    StopperPart half;
    half.knot = need.length(FigureId::knot, diameter);
    half.beyond = need.field_or(tail, FigureId::tail, diameter);
    half.form = bend.form;
    half.count = need.number(FigureId::turns);
    if (need.failed()) {
        return need.fault();
    }
    End end = lay_stopper(request, half);
    end.add(Value{ValueName::turns, half.count});
    add_slip_caution(end, request);
    end.steps = bend.steps;
    return end;
}

} // namespace

Kinds bends() {
    Kinds kinds;
    for (const Bend& bend : knots) {
        kinds.push_back({{.name = bend.name,
                          .title = bend.title,
                          .datum = bend.datum,
                          .constructions = fibre_ropes,
                          .fields = fields,
                          .families = {"bends"}},
                         [&bend](const Request& request) {
                             return work_out(bend, request);
                         }});
    }
    return kinds;
}

} // namespace libsplice
