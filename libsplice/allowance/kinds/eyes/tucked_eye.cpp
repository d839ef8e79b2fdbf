// tucked-eye: strands unlaid and tucked back into the standing part, over one and under one.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/eye_part.h"
#include "libsplice/allowance/parts/tuck_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { eye, pin, tucks, end_left, pick };
constexpr std::array fields{field::eye, field::pin, field::tucks, field::end_left, field::pick};

constexpr std::array steps_laid{
    Step{Action::tape, {MarkName::unlay}, "Whip or tape the rope at the unlay mark."},
    Step{Action::unlay,
         {MarkName::unlay},
         "Tape each strand's end and unlay the strands down to it."},
    Step{Action::bring_together,
         {MarkName::unlay, MarkName::far_throat},
         "Lay the eye so that the unlay mark meets the far throat, with the eye {eye} from crown "
         "to throat."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Tuck the middle strand under the strand of the standing part nearest to it, against the "
         "lay."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Tuck the left strand under the next one to the left. Turn the splice over and tuck the "
         "last strand under the one that is left, also against the lay: one strand out of every "
         "gap."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Draw each strand up along its lay. That is one full tuck; go on, over one and under one, "
         "until there are {tucks}."},
    Step{Action::load,
         {},
         "Leave {end_left} of each strand past the last tuck. Roll the splice and load it before "
         "anything is trimmed."},
    Step{Action::measure, {}, "Load the eye, then measure it again."}};

constexpr std::array steps_plait{
    Step{Action::tape, {MarkName::unlay}, "Tape the rope at the unlay mark."},
    Step{Action::unlay,
         {MarkName::unlay},
         "Unlay the strands to it and tape their ends in their four pairs, each pair of one hand."},
    Step{Action::bring_together,
         {MarkName::unlay, MarkName::far_throat},
         "Lay the eye so that the unlay mark meets the far throat, with the eye {eye} from crown "
         "to throat."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Tuck the two pairs of one hand under pairs of the same hand in the standing part, "
         "following them."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Turn the rope over and tuck the two pairs of the other hand likewise; draw all four up "
         "evenly."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "That is one full tuck. Go on, each pair following its own hand down the rope, until "
         "there are {tucks}."},
    Step{Action::tuck,
         {MarkName::far_throat},
         "Leave {end_left} past the last tuck; drop one strand of each pair in the last tucks if "
         "the "
         "splice must be slim."},
    Step{Action::load, {}, "Load the eye, then measure it again."}};

/// The near throat is where the unlaying stops.
constexpr EyeWords words{.near = MarkName::unlay};

Result<End> work_out(const Request& request) {
    Figures need(request);
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
    end.steps = request.rope.construction == Construction::three_strand ? Steps(steps_laid)
                                                                        : Steps(steps_plait);
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
