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
    double count = 0.0; ///< of its turns or crossings
    Steps steps;
};

constexpr std::array double_fisherman{
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
    Step{Action::load, {}, "Leave {tail} on each side and look at it after the first load."}};

constexpr std::array knots{
    Bend{.name = "double-fisherman",
         .title = "half of a bend of two barrels; this line's side only",
         .datum = "where the two barrels meet",
         .form = Span::Form::turns,
         .count = 2.0,
         .steps = double_fisherman},
};

Result<End> work_out(const Bend& bend, const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    const auto knot = need.length(FigureId::knot, diameter);
    const auto left = need.field_or(tail, FigureId::tail, diameter);
    if (need.failed()) {
        return need.fault();
    }
    End allowance = lay_stopper(request, {{}, knot, {}, left, {}, bend.form, bend.count});
    add_slip_caution(allowance, request);
    allowance.steps = bend.steps;
    return allowance;
}

} // namespace

Kinds bends() {
    Kinds kinds;
    for (const Bend& bend : knots) {
        kinds.push_back({{bend.name, bend.title, bend.datum, fibre_ropes, fields},
                         [&bend](const Request& request) {
                             return work_out(bend, request);
                         }});
    }
    return kinds;
}

} // namespace libsplice
