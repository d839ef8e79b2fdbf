// clipped-eye: wire turned back round a thimble and held by wire-rope clips.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/laid_back_part.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration clips_field{"clips",
                                       "number of wire-rope clips",
                                       Dimension::count,
                                       2.0,
                                       12.0,
                                       "the number printed for the wire's size"};
constexpr FieldDeclaration turn_back_field{
    "turn_back",
    "wire turned back, from the throat to its end",
    Dimension::length,
    0.01,
    5.0,
    "the length printed for the wire's size, more in proportion with more clips"};

constexpr FieldDeclaration base_field{
    "base",
    "width of a clip's base, along the wire; with it every clip has a mark of its own",
    Dimension::length,
    0.002,
    0.2,
    "not known: the clips have no marks"};

enum Field : std::size_t { eye, pin, clips, turn_back, base };
constexpr std::array fields{field::eye, field::pin, clips_field, turn_back_field, base_field};

constexpr Step put_marks{
    Action::mark, {}, "Put the marks on. Take any coating off the wire where clips will grip."};
constexpr Step put_in{Action::fit_first, {}, "Put the thimble in, and what the eye is to hold."};
constexpr Step turn_back_wire{
    Action::bring_together,
    {MarkName::turn_back, MarkName::far_throat},
    "Turn the wire back round the thimble until the turn-back mark meets the far throat: "
    "{turn_back} of dead end lies along the standing part."};
constexpr Step others{
    Action::seize,
    {MarkName::far_throat},
    "{clips} clips belong on this eye. Put those that are left between these two, evenly, "
    "{spacing} or more from one to the next, every saddle on the standing part."};
constexpr Step load{Action::load,
                    {},
                    "Load the eye, then tighten all nuts to the same torque again: wire gets "
                    "thinner under its first load."};

constexpr Step first_clip(std::string_view text) {
    return {Action::seize, {MarkName::far_throat}, text};
}
constexpr Step second_clip{Action::seize,
                           {MarkName::far_throat},
                           "Put the second clip as near to the thimble as it goes, saddle on the "
                           "standing part. Leave its nuts a little slack."};
constexpr Step first_by_torque =
    first_clip("Put the first clip one width of its base from the end of the dead end. The U-bolt "
               "lies on the dead end and the saddle on the standing part. Tighten its nuts by "
               "turns to {torque_nm} N m, threads clean, dry and without oil.");
constexpr Step first_by_maker =
    first_clip("Put the first clip one width of its base from the end of the dead end. The U-bolt "
               "lies on the dead end and the saddle on the standing part. Tighten its nuts by "
               "turns to the torque that the clip maker gives.");
constexpr Step all_by_torque{Action::draw_up,
                             {},
                             "Take up the slack with a light pull and tighten all nuts by turns to "
                             "{torque_nm} N m."};
constexpr Step all_by_maker{Action::draw_up,
                            {},
                            "Take up the slack with a light pull and tighten all nuts by turns to "
                            "the clip maker's torque."};

constexpr std::array two_by_torque{
    put_marks, put_in, turn_back_wire, first_by_torque, second_clip, all_by_torque, load};
constexpr std::array two_by_maker{put_marks,    put_in, turn_back_wire, first_by_maker, second_clip,
                                  all_by_maker, load};
constexpr std::array more_by_torque{put_marks,   put_in, turn_back_wire, first_by_torque,
                                    second_clip, others, all_by_torque,  load};
constexpr std::array more_by_maker{put_marks,   put_in, turn_back_wire, first_by_maker,
                                   second_clip, others, all_by_maker,   load};

std::span<const Step> steps_for(bool two, bool torque) {
    if (two) {
        return torque ? std::span<const Step>(two_by_torque) : two_by_maker;
    }
    return torque ? std::span<const Step>(more_by_torque) : more_by_maker;
}

constexpr std::size_t most_clips = 12;
static_assert(static_cast<std::size_t>(MarkName::clip_12) -
                  static_cast<std::size_t>(MarkName::clip_1) + 1 ==
              most_clips);
constexpr double newton_metres_in_a_pound_foot = 1.3558179483314004;

struct Clips {
    double count = 0.0;
    SourcedLength turn_back;
    Length spacing;
    bool unprinted = false; ///< no table has this size
};

/// A size that no table prints, with clips and turn-back from the clip maker's sheet.
std::optional<Clips> of_the_maker(const Request& request) {
    const auto turned = request.fields.length(turn_back);
    const auto spacing = request.rules.find(FigureId::clip_spacing);
    if (request.rules.find(FigureId::clips) != nullptr || spacing == nullptr || !turned ||
        !request.fields.has(clips)) {
        return std::nullopt;
    }
    return Clips{request.fields.at(clips), from_job(*turned),
                 spacing->length(request.rope.diameter), true};
}

Result<Clips> read_clips(const Request& request) {
    if (const auto given = of_the_maker(request)) {
        return *given;
    }
    Figures need(request);
    const Figure count = need.figure(FigureId::clips);
    const Figure turned = need.figure(FigureId::turn_back);
    const Figure spacing = need.figure(FigureId::clip_spacing);
    if (need.failed()) {
        return need.fault();
    }
    const Length diameter = request.rope.diameter;
    Clips chosen{count.number(), from_figure(turned, diameter), spacing.length(diameter), false};
    const auto named = [&](Fault fault, const Figure& figure) {
        fault.rule = to_text(request.citations.at(figure.source));
        return Unexpected(std::move(fault));
    };
    if (request.fields.has(clips)) {
        const double given = request.fields.at(clips);
        if (given < chosen.count) {
            return named(Fault{Code::below_published_minimum,
                               show_number(given, 0) +
                                   " clips are below the published minimum of " +
                                   show_number(chosen.count, 0) + " for this size",
                               {},
                               "clips"},
                         count);
        }
        const Length sd = chosen.turn_back.sd; // as printed; the clips are counted
        chosen.turn_back = times(given / chosen.count, chosen.turn_back);
        chosen.turn_back.sd = sd;
        chosen.count = given;
    }
    if (const auto given = request.fields.length(turn_back)) {
        if (to_nanometres(*given) < to_nanometres(chosen.turn_back.length)) {
            return named(Fault{Code::below_published_minimum,
                               "a turn-back of " + show_length(*given, UnitSystem::metric) +
                                   " is below the published minimum of " +
                                   show_length(chosen.turn_back.length, UnitSystem::metric) +
                                   " for this size and " + show_number(chosen.count, 0) + " clips",
                               {},
                               "turn_back"},
                         turned);
        }
        chosen.turn_back = from_job(*given);
    }
    return chosen;
}

/// The middle of every clip: the first is one base from the wire's end, the last against the
/// throat, the others evenly between them.
Result<ShortList<Mark, most_clips>> marks_of_clips(const Request& request, const Clips& held) {
    ShortList<Mark, most_clips> marks;
    const auto width = request.fields.length(base);
    if (!width) {
        return marks;
    }
    if (*width * (held.count + 1.0) > held.turn_back.length) {
        return Unexpected(Fault{Code::field_out_of_range,
                                show_number(held.count, 0) + " clips of " +
                                    show_length(*width, UnitSystem::metric) +
                                    " have no room on a turn-back of " +
                                    show_length(held.turn_back.length, UnitSystem::metric) +
                                    " with one base free at its end",
                                {},
                                "base"});
    }
    const auto count = static_cast<std::size_t>(held.count);
    const Length first = *width * 1.5;
    const Length gap = (held.turn_back.length - *width * 2.0) / static_cast<double>(count - 1);
    for (std::size_t i = 0; i < count; ++i) {
        const auto name = static_cast<MarkName>(static_cast<std::size_t>(MarkName::clip_1) + i);
        marks.push_back(Mark{name, to_nanometres(first + gap * static_cast<double>(i))});
    }
    return marks;
}

Result<End> work_out(const Request& request) {
    Figures need(request);
    const auto eye_part = need.part(
        read_eye(request, {eye, pin}, request.rope.counting_diameter(), turned_back_words));
    const auto held = need.part(read_clips(request));
    if (need.failed()) {
        return need.fault();
    }
    const auto clip_marks = marks_of_clips(request, held);
    if (!clip_marks) {
        return Unexpected(clip_marks.error());
    }
    End end = turned_back_eye(request, {eye_part, held.turn_back, Span::Form::clipped, held.count});
    for (const Mark& mark : *clip_marks) {
        end.add(mark);
    }
    end.add(Value{ValueName::clips, held.count});
    end.add(Value{ValueName::spacing_m, held.spacing.si()});
    const Figure* torque = request.rules.find(FigureId::torque);
    if (torque != nullptr) {
        end.add(Value{ValueName::torque_nm, torque->number() * newton_metres_in_a_pound_foot});
    }
    end.steps = steps_for(held.count < 3.0, torque != nullptr);
    if (held.unprinted) {
        end.add(Caution{"no table prints this size of wire: {clips} clips and {turn_back} are the "
                        "job's own; take both from the clip maker's sheet",
                        cited_job, Caution::Weight::refused_for_person});
    }
    return end;
}

} // namespace

Kind clipped_eye() {
    return {{"clipped-eye", "wire turned back and held by wire-rope clips",
             "inside of the eye's crown", Constructions(Construction::wire), fields},
            work_out};
}

} // namespace libsplice
