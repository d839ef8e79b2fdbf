// tucked-eye: strands unlaid and tucked back into the standing part, over one and under one.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/eye_part.h"
#include "libsplice/allowance/parts/tuck_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { eye, pin, tucks, end_left, pick };
constexpr std::array fields{field::eye, field::pin, field::tucks, field::end_left, field::pick};

constexpr std::array steps_laid{
    Step{Action::mark,
         {MarkName::unlay, MarkName::far_throat},
         "Mark the unlay mark and the far throat."},
    Step{Action::tape, {MarkName::unlay}, "Whip or tape the rope at the unlay mark."},
    Step{Action::unlay,
         {MarkName::unlay},
         "Tape each strand's end, unlay the strands down to the mark, and keep the turn in them."},
    Step{Action::fit_first,
         {},
         "Put on now what this eye is to hold. A thimble can go in until the first round is drawn "
         "up."},
    Step{Action::bring_together,
         {MarkName::unlay, MarkName::far_throat},
         "Bend the eye until the unlay mark meets the far throat: {eye} from crown to throat. Take "
         "half a turn out of the rope of the eye, or it comes out twisted."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Tuck the middle strand under the nearest strand of the standing part, from right to "
         "left, against the lay."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Tuck the left strand under the next one to the left. Turn the splice over, take the last "
         "strand round to the right of the one that is left, and tuck it under that, again from "
         "right to left: one strand comes out of every gap."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Seat the thimble, if there is one, and draw each strand up along its lay. That is one "
         "full tuck. Go on, over one and under one, until there are {tucks}."},
    Step{Action::load, {}, "Roll the splice, load the eye, then measure it again."},
    Step{
        Action::whip,
        {MarkName::far_throat},
        "Leave {end_left} of each strand beyond the last tuck and whip the ends to the rope. For a "
        "slim end tuck them twice more, thinned, instead, and only then cut them off; seal "
        "synthetic yarns."}};

constexpr std::array steps_plait{
    Step{
        Action::mark,
        {MarkName::unlay, MarkName::far_throat, MarkName::pen_end},
        "Mark the unlay mark, the far throat, and how far the pen lines go. Before anything is "
        "opened, run a pen along the strands of one hand, from the end through the eye to there or "
        "further: without it the hands get mixed."},
    Step{Action::tape, {MarkName::unlay}, "Tape the rope at the unlay mark."},
    Step{Action::unlay,
         {MarkName::unlay},
         "Unlay the strands to it and tape their ends in their four pairs, each pair of one hand."},
    Step{Action::fit_first, {}, "Put on now what this eye is to hold."},
    Step{Action::bring_together,
         {MarkName::unlay, MarkName::far_throat},
         "Bend the eye until the unlay mark meets the far throat: {eye} from crown to throat."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Tuck the two pairs of one hand, each under the nearest pair of the other hand in the "
         "standing part, lying beside a pair of its own."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Turn the rope over and tuck the two pairs of the other hand the other way round. Again "
         "each goes under a pair of the hand that is not its own. Draw all four up evenly."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "That is one full tuck. Go on, each pair beside its own hand down the rope, until there "
         "are {tucks}."},
    Step{Action::load, {}, "Load the eye, then measure it again."},
    Step{
        Action::whip,
        {MarkName::far_throat},
        "Leave {end_left} of each strand beyond the last tuck and whip the ends to the rope. For a "
        "slim splice one strand of each pair may be left out of the last tucks."}};

/// How far beyond the far throat the pen has to mark one hand's strands of a plait.
Length pen_lines(Figures& need, const Request& request) {
    const double picks = need.number(FigureId::exit);
    return need.field_or(pick, FigureId::pick, request.rope.counting_diameter()).length * picks;
}

/// The near throat is where the unlaying stops.
constexpr EyeWords words{.near = MarkName::unlay};

Result<End> work_out(const Request& request) {
    Figures need(request);
    const bool plait = request.rope.construction == Construction::eight_plait;
    const Length pen = plait ? pen_lines(need, request) : Length();
    const auto eye_part =
        need.part(read_eye(request, {eye, pin}, request.rope.counting_diameter(), words));
    const auto tuck_part = need.part(read_tucks(request, {tucks, end_left, pick}));
    if (need.failed()) {
        return need.fault();
    }
    End end;
    add_eye_rows(end, eye_part);
    const Nanometres near_throat = add_tucks(end, tuck_part, request);
    lay_eye(end, eye_part, request, near_throat);
    add_retained(end, request);
    if (plait) {
        end.add(Mark{MarkName::pen_end, end.standing_mark + to_nanometres(pen)});
    }
    end.steps = plait ? Steps(steps_plait) : Steps(steps_laid);
    return end;
}

} // namespace

Kind tucked_eye() {
    return {{"tucked-eye", "eye splice, strands tucked back into the standing part",
             "inside of the eye's crown",
             Constructions(Construction::three_strand, Construction::eight_plait), fields},
            work_out};
}

} // namespace libsplice
