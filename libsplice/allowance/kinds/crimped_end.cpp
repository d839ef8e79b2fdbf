// crimped-end: shock cord held in a crimped ring, a hook or a clamp, or looped back through a ring.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/eye_part.h"
#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 4> forms{"ring", "hook", "clamp", "loop"};
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

enum Field : std::size_t { form, length, end_left, eye, pin };
constexpr std::array fields{form_field, length_field, end_left_field,
                            field::eye_of("3 times the pin, at least 8 D; with form loop only"),
                            field::pin};

constexpr Step put_marks{Action::mark, {}, "Put the marks on with the cord relaxed and straight."};
constexpr std::array steps_ring{
    put_marks,
    Step{Action::cut,
         {},
         "Heat-cut the cord with a thin tape round it, and let it cool: rubber that stands out of "
         "its cover will draw back in."},
    Step{Action::thread,
         {},
         "Push the cord through the open ring until {end_left} stands out; the fitting's-mouth "
         "mark lies at its other side."},
    Step{Action::press,
         {MarkName::crimp},
         "Close the ring with its pliers, square to the cord, first in the middle, then at the "
         "edges. The cord must bulge on both sides."},
    Step{
        Action::load,
        {},
        "With glasses on, pull it to its working stretch three times, then measure it relaxed. One "
        "part in a ring holds little: if it creeps, choose form loop, with both parts in the "
        "ring."}};
constexpr std::array steps_loop{
    put_marks,
    Step{Action::cut,
         {},
         "Heat-cut the cord with a thin tape round it, and let it cool: rubber that stands out of "
         "its cover will draw back in."},
    Step{Action::thread, {}, "Thread the open ring on the cord, past the far-throat mark."},
    Step{Action::fit_first,
         {},
         "Lead the cord through what the loop holds, if that cannot be hooked on later."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "Turn the end back through the ring beside its own part, the cord slack, until the two "
         "throat marks meet at the ring's edge and {end_left} stands out: the loop is {eye}."},
    Step{Action::press,
         {MarkName::near_throat},
         "Close the ring with its pliers over both parts, first in the middle, then at the edges. "
         "Both parts must bulge."},
    Step{Action::load,
         {},
         "With glasses on, pull it to its working stretch three times, then measure it relaxed."}};
constexpr std::array steps_hook{
    put_marks, Step{Action::cut, {}, "Heat-cut the cord and let it cool."},
    Step{Action::thread,
         {},
         "Push the cord up the hook's barrel until the fitting's-mouth mark "
         "lies at the barrel's mouth: {crimp} is inside. A hook that wants a "
         "knot inside is a stopper-ball."},
    Step{Action::press,
         {MarkName::crimp},
         "Crimp or wire the barrel's mouth, so that the cord cannot work in it."},
    Step{Action::load,
         {},
         "With glasses on, pull it to its working stretch three times, then measure it relaxed."}};
constexpr std::array steps_clamp{
    put_marks,
    Step{Action::cut, {}, "Heat-cut the cord and let it cool."},
    Step{Action::thread,
         {},
         "Lay the relaxed cord in the open clamp, the fitting's-mouth mark "
         "at the edge: {crimp} lies inside."},
    Step{Action::press,
         {MarkName::crimp},
         "Close the two halves until their teeth are in the cover and the screws or rivets are "
         "home."},
    Step{Action::measure,
         {},
         "Look at the cover at the clamp's edge: cut threads mean a clamp too small."},
    Step{Action::load,
         {},
         "With glasses on, pull it to its working stretch three times, then measure it relaxed."}};

enum class CrimpForm : std::uint8_t { ring, hook, clamp, loop };

/// What holds the cord, and how much of it lies there.
struct Crimp {
    CrimpForm form = CrimpForm::ring;
    SourcedLength held;
    SourcedLength left;
};

Steps steps_of(CrimpForm form) {
    switch (form) {
    case CrimpForm::ring:
        return steps_ring;
    case CrimpForm::hook:
        return steps_hook;
    case CrimpForm::clamp:
        return steps_clamp;
    case CrimpForm::loop:
        break;
    }
    return steps_loop;
}

/// Cord that ends in its fitting: measured from the mouth.
void lay_straight(End& end, const Request& request, const Crimp& crimp, Nanometres far_side) {
    end.standing_mark = far_side + to_nanometres(crimp.held.length);
    end.add(Mark{MarkName::crimp, end.standing_mark});
    end.add(Span{Span::Form::crimped, far_side, end.standing_mark,
                 to_nanometres(request.rope.counting_diameter())});
}

/// Cord turned back into a loop, the ring round both its parts: measured from the crown.
void lay_loop(End& end, const Request& request, const EyePart& loop, const Crimp& crimp,
              Nanometres far_side) {
    const Nanometres near_throat = far_side + to_nanometres(crimp.held.length);
    lay_eye(end, loop, request, near_throat);
    end.add(Span{Span::Form::crimped, far_side, near_throat,
                 to_nanometres(request.rope.counting_diameter())});
}

Result<End> work_out(const Request& request) {
    const Length cord = request.rope.counting_diameter();
    Figures need(request);
    const auto left = need.field_or(end_left, FigureId::end_left, cord);
    if (need.failed()) {
        return need.fault();
    }
    const Crimp crimp{request.fields.has(form) ? static_cast<CrimpForm>(request.fields.at(form))
                                               : CrimpForm::ring,
                      from_job(Length(request.fields.at(length))), left};
    const bool is_loop = crimp.form == CrimpForm::loop;
    if (!is_loop) {
        if (auto fault = find_foreign_field(request, fields, {eye, pin + 1},
                                            "a crimped end without a loop")) {
            return Unexpected(*std::move(fault));
        }
    }
    std::optional<EyePart> loop;
    if (is_loop) {
        auto shaped = read_eye(request, {eye, pin}, cord);
        if (!shaped) {
            return Unexpected(shaped.error());
        }
        loop = *shaped;
    }
    End end;
    if (loop) {
        add_eye_rows(end, *loop);
    }
    end.add(row_of(Item::crimp, crimp.held));
    end.add(row_of(Item::end_left, crimp.left));
    const Nanometres tail_end = add_cutting_loss(end, request, Cut::heat);
    const Nanometres far_side = tail_end + to_nanometres(crimp.left.length);
    end.add(Value{ValueName::crimp_m, crimp.held.length.si()});
    end.add(Value{ValueName::end_left_m, crimp.left.length.si()});
    if (loop) {
        lay_loop(end, request, *loop, crimp, far_side);
    } else {
        lay_straight(end, request, crimp, far_side);
    }
    add_retained(end, request);
    end.steps = steps_of(crimp.form);
    return end;
}

} // namespace

Kind crimped_end() {
    return {{"crimped-end",
             "shock cord held in a crimped ring, a hook or a clamp, or looped back through a ring",
             "mouth of the fitting, where the cord comes out of it, relaxed; with form loop the "
             "inside of "
             "the loop's crown",
             Constructions(Construction::shock_cord), fields},
            work_out};
}

} // namespace libsplice
