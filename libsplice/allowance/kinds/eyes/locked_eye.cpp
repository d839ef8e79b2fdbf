// locked-eye: each part is passed through the other at the throat, then the tail is buried.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/buried_eye_part.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> far_end_choices{"free", "fixed"};
constexpr FieldDeclaration far_end{
    "far_end",
    "whether the line's other end is free and thin enough to be passed through the rope",
    Dimension::choice,
    0.0,
    0.0,
    "free; fixed where the other end is made first",
    false,
    far_end_choices,
    {},
    FieldRole::far_end};

enum Field : std::size_t { eye, pin, tail, taper, exit, settled, pairs, other_end };
constexpr std::array fields{field::eye_of("5 times the pin, at least 8 D"),
                            field::pin,
                            field::tail,
                            field::taper,
                            field::exit,
                            field::settled,
                            field::pairs,
                            far_end};

constexpr Step square_end{
    Action::cut, {}, "Tape the end and cut it square, now that the marks are on."};
constexpr Step put_marks{Action::mark, {}, "Put the marks on at the pull to mark at."};
constexpr Step thin{Action::taper,
                    {MarkName::taper_start},
                    "Thin the tail from the taper-start mark to its end: one strand of each hand "
                    "is drawn out and cut at every drop-pair mark."};
constexpr Step lead_down{Action::lead_in,
                         {MarkName::far_throat, MarkName::exit},
                         "Lead the tail down inside the rope from the throat and bring it out at "
                         "the exit mark, {exit} from the throat."};
constexpr Step bury_it{Action::bury,
                       {MarkName::far_throat, MarkName::bury_end},
                       "Hold the throat and smooth the rope over the tail until its end goes in, "
                       "near the bury-end mark."};
constexpr Step stitch{Action::stitch,
                      {MarkName::far_throat},
                      "Lock-stitch through tail and both walls from {stitch_start} to "
                      "{stitch_end} beyond the throat."};
constexpr Step load{
    Action::load, {}, "Load the eye until the crossing closes up, then measure it again."};

constexpr std::array steps_far_end_free{
    put_marks,
    square_end,
    Step{Action::pass_tail_through_host,
         {MarkName::far_throat, MarkName::near_throat},
         "Open the rope at the far throat and pass the tail through it until the near-throat mark "
         "meets the far throat."},
    Step{Action::pass_line_through_tail,
         {MarkName::near_throat},
         "Open the tail just beside the near-throat mark and pass the line's whole other end "
         "through it."},
    Step{
        Action::bring_together,
        {MarkName::near_throat, MarkName::far_throat},
        "Draw up until the two crossings touch and the eye is {eye} long; take out any half turn."},
    thin,
    lead_down,
    bury_it,
    stitch,
    load};

constexpr std::array steps_far_end_fixed{
    put_marks,
    square_end,
    Step{Action::pass_tail_through_host,
         {MarkName::far_throat, MarkName::near_throat},
         "The line's other end cannot be passed through, so the eye is turned through itself. Open "
         "the rope at the far throat and pass the tail through it until the near-throat mark meets "
         "the far throat."},
    Step{Action::turn_eye_through,
         {MarkName::near_throat},
         "Open the tail just beside the near-throat mark. Reach through that opening, take hold of "
         "the crown and draw the whole eye through it, as a sleeve is turned."},
    Step{Action::bring_together,
         {MarkName::near_throat, MarkName::far_throat},
         "The two parts now pass through each other. Work the turns out of the eye until its legs "
         "lie fair, the crossings touch and the eye is {eye} long; a half turn left in shows as a "
         "twist at the crown."},
    thin,
    lead_down,
    bury_it,
    stitch,
    load};

Result<End> work_out(const Request& request) {
    auto allowance = locked_eye_with_bury(request, {eye, pin}, {tail, taper, exit, settled, pairs});
    if (!allowance) {
        return allowance;
    }
    const bool fixed = request.fields.has(other_end) && request.fields.at(other_end) > 0.5;
    allowance->steps = fixed ? Steps(steps_far_end_fixed) : Steps(steps_far_end_free);
    return allowance;
}

} // namespace

Kind locked_eye() {
    return {{.name = "locked-eye",
             .title = "eye splice, each part passed through the other, then buried",
             .datum = "inside of the eye's crown",
             .constructions = Constructions(Construction::twelve_strand),
             .fields = fields,
             .families = {"buried-eyes", "buries"}},
            work_out};
}

} // namespace libsplice
