// short-splice: two ends of laid rope married and tucked into each other, both ways.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/tuck_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { tucks, end_left };
constexpr std::array fields{field::tucks, field::end_left};

constexpr std::array steps{
    Step{Action::fit_first,
         {},
         "Put on the line what has to be there before it is closed: blocks, rings, a bag."},
    Step{Action::mark, {MarkName::unlay}, "Mark both ends at their unlay marks."},
    Step{Action::tape, {MarkName::unlay}, "Whip or tape both ends there."},
    Step{Action::unlay,
         {MarkName::unlay},
         "Tape each strand's end and unlay the strands down to the marks."},
    Step{Action::bring_together,
         {MarkName::unlay},
         "Marry the two ends: each strand comes between two of the other end, and the marks meet."},
    Step{Action::seize, {MarkName::unlay}, "Bind the middle, so that it cannot open."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Tuck the three strands of one end against the lay into the other, over one and under "
         "one, one strand out of every gap. Draw them up along their lay."},
    Step{Action::tuck,
         {MarkName::unlay},
         "Go on until that side has {tucks} full tucks. Turn the splice round, take the binding "
         "off, draw the marriage up, and tuck the other side as often."},
    Step{Action::load,
         {},
         "Roll the splice, load the closed line, then measure round it again. It is twice as thick "
         "here: it will not run through a block made for this rope."},
    Step{
        Action::whip,
        {MarkName::unlay},
        "Leave {end_left} of each strand beyond its last tuck and whip the ends to the rope. For a "
        "slim splice tuck them twice more, thinned, instead, and only then cut them off."}};

Result<End> work_out(const Request& request) {
    const auto tuck_part = read_tucks(request, {tucks, end_left});
    if (!tuck_part) {
        return Unexpected(tuck_part.error());
    }
    End side;
    side.standing_mark = add_tucks(side, *tuck_part, request);
    side.add(Mark{MarkName::unlay, side.standing_mark});
    add_retained(side, request);
    side.steps = steps;
    count_both_sides(side);
    return side;
}

} // namespace

Kind short_splice() {
    return {{"short-splice", "two ends of laid rope tucked into each other",
             "round the closed line, in use; the ends meet where their strands part",
             Constructions(Construction::three_strand), fields, Reach::both_ends},
            work_out};
}

} // namespace libsplice
