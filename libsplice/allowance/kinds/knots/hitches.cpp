// The hitches: one row each.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/kinds/knots/clove_margin.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> no_or_yes{"no", "yes"};
constexpr FieldDeclaration stitched{.name = "stitched",
                                    .meaning = "whether the tail is stitched to the standing part",
                                    .dimension = Dimension::choice,
                                    .default_text = "no; bare HMPE needs yes",
                                    .choices = no_or_yes};

constexpr std::array halyard_fields{field::held_pin, field::turns_of("the table's figure, 2"),
                                    field::knot_tail};
constexpr std::array buntline_fields{field::held_pin, field::turns_of("the table's figure, 1"),
                                     field::knot_tail};
constexpr std::array round_turn_fields{field::spar, field::turns_of("the table's figure, 2"),
                                       field::knot_tail};
constexpr std::array clove_fields{field::spar, field::turns_of("the table's figure, 2", 2.0),
                                  field::knot_tail, stitched};
constexpr std::array cow_fields{field::spar, field::knot_tail};
constexpr std::array rolling_fields{field::spar, field::turns_of("the table's figure, 3", 3.0),
                                    field::knot_tail};

/// What friction has to hold in a hitch, and what is said of it.
enum class Friction : std::uint8_t {
    not_counted,
    of_turns,    ///< the share of a load that gets past the turns
    of_crossing, ///< whether the crossing alone holds; where a knot slips the tail is stitched
};

/// A hitch: what it is, how it lies, and how it is tied.
struct HitchKnot {
    std::string_view name;
    std::string_view title;
    std::string_view datum;
    std::span<const FieldDeclaration> fields; ///< what it goes round comes first
    ValueName around = ValueName::spar_m;
    Finish finish;
    bool finish_counts_turns = false; ///< one part less than the turns
    Friction friction = Friction::not_counted;
    Steps steps;
    Steps steps_stitched = {}; ///< with the tail stitched; of a hitch that has the field
};

constexpr std::array halyard_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Put the load-side mark at the bow and wrap the end round it, {turns} wraps, working away "
         "from the standing part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end back over the wraps and once round the standing part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Lead the end under all the wraps, between them and the bow, and out on the far side."},
    Step{Action::draw_up,
         {},
         "Draw the wraps tight one by one, then the end, until the hitch sits hard on the bow with "
         "{tail} left."},
    Step{Action::load,
         {},
         "Load it and measure from the bow: it draws out most at its first load."}};

constexpr std::array buntline_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Pass the end round the pin, {turns} turns, with the load-side mark where the standing "
         "part meets it."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end right round the standing part, going away from the pin."},
    Step{Action::tie,
         {MarkName::load_side},
         "Make a second turn on the pin's side of the first and bring the end out beneath it, so "
         "that the tail is trapped against the pin."},
    Step{Action::draw_up,
         {},
         "Draw up the two turns, slide them down on the pin and leave {tail}: under load it jams, "
         "and is not meant to be shaken out."}};

constexpr std::array round_turn{
    Step{Action::tie,
         {MarkName::load_side},
         "Take {turns} turns round the spar from the load-side mark, side by side."},
    Step{Action::tie,
         {MarkName::load_side},
         "Make a half hitch round the standing part close to the spar, and a second one the same "
         "way round."},
    Step{Action::draw_up,
         {},
         "Draw the half hitches up against the turns, with {tail} left beyond."},
    Step{Action::load,
         {},
         "Load it slowly and see that the turns take the load before the half hitches do."}};

constexpr std::array clove_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end once round the spar from the load-side mark and cross it over the standing "
         "part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Go on round the same way until {turns} turns lie there, and tuck the end under the "
         "crossing."},
    Step{Action::draw_up, {}, "Draw both parts up hard in line with the spar, {tail} left beyond."},
    Step{Action::tie,
         {MarkName::load_side},
         "Add a half hitch where the load comes and goes: the hitch rolls and works loose on a "
         "turning spar."}};

constexpr std::array clove_hitch_stitched{
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end once round the spar from the load-side mark and cross it over the standing "
         "part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Go on round the same way until {turns} turns lie there, and tuck the end under the "
         "crossing."},
    Step{Action::draw_up,
         {},
         "Draw both parts up hard, and lay the tail of {tail} along the standing part."},
    Step{Action::stitch,
         {MarkName::knot_far_side},
         "Stitch the tail to the standing part along its whole length, through both, before any "
         "load comes on."}};

constexpr std::array cow_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Take the end over the spar, down behind it and out on the load "
         "side, the load-side mark at the spar."},
    Step{Action::tie,
         {MarkName::load_side},
         "Cross the end in front of the standing part, take it round the "
         "spar the other way, and out down through the bight so made."},
    Step{Action::tie,
         {MarkName::load_side},
         "Finish with one half hitch round the standing part: loaded on one "
         "part alone a cow hitch creeps."},
    Step{Action::draw_up, {}, "Draw up both turns and leave {tail}."}};

constexpr std::array rolling_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Start at the load-side mark and take all but one of the {turns} turns towards the pull, "
         "each crossing over the standing part."},
    Step{Action::tie,
         {MarkName::load_side},
         "Take the last turn on the far side of the standing part and tuck the end under it."},
    Step{Action::draw_up,
         {},
         "Draw the turns up side by side before any load comes on, with {tail} left."},
    Step{Action::load,
         {},
         "Pull along the spar towards the riding turns, gently at first; it holds in that "
         "direction only."}};

constexpr std::array knots{
    HitchKnot{.name = "halyard-hitch",
              .title = "compact hitch to the bow of a halyard shackle",
              .datum = "load side of the bow",
              .fields = halyard_fields,
              .around = ValueName::pin_m,
              .finish = {Span::Form::tucked, 1.0},
              .steps = halyard_hitch},
    HitchKnot{.name = "buntline-hitch",
              .title = "jamming hitch to a ring, pin or shackle",
              .datum = "load side of the pin or ring",
              .fields = buntline_fields,
              .around = ValueName::pin_m,
              .finish = {Span::Form::turns, 2.0},
              .steps = buntline_hitch},
    HitchKnot{.name = "round-turn-two-half-hitches",
              .title = "turns round a spar or ring and two half hitches",
              .datum = "load side of the spar",
              .fields = round_turn_fields,
              .finish = {Span::Form::half_hitches, 2.0},
              .friction = Friction::of_turns,
              .steps = round_turn},
    HitchKnot{.name = "clove-hitch",
              .title = "two crossing turns round a spar",
              .datum = "load side of the spar",
              .fields = clove_fields,
              .finish = {Span::Form::crossed, 1.0},
              .finish_counts_turns = true,
              .friction = Friction::of_crossing,
              .steps = clove_hitch,
              .steps_stitched = clove_hitch_stitched},
    HitchKnot{.name = "cow-hitch",
              .title = "two opposed turns round a spar or ring",
              .datum = "load side of the spar",
              .fields = cow_fields,
              .finish = {Span::Form::half_hitches, 1.0},
              .steps = cow_hitch},
    HitchKnot{.name = "rolling-hitch",
              .title = "hitch that grips against a pull along the spar",
              .datum = "where the standing part leaves the first turn",
              .fields = rolling_fields,
              .finish = {Span::Form::crossed, 2.0},
              .steps = rolling_hitch},
};

bool is_stitched(const HitchKnot& knot, const Request& request) {
    const auto field = find_field(knot.fields, stitched.name);
    return field && request.fields.has(*field) && request.fields.at(*field) > 0.5;
}

HitchFields fields_of(const HitchKnot& knot) {
    const auto tail = find_field(knot.fields, field::knot_tail.name);
    Expects(tail.has_value());
    return {0, find_field(knot.fields, "turns"), *tail, knot.around};
}

Result<End> work_out(const HitchKnot& knot, const Request& request) {
    const bool stitched_down = is_stitched(knot, request);
    const bool by_crossing = knot.friction == Friction::of_crossing;
    if (by_crossing && !stitched_down) {
        if (auto fault = needs_stitching(request)) {
            return Unexpected(*std::move(fault));
        }
    }
    const auto hitch = read_hitch(request, fields_of(knot));
    if (!hitch) {
        return Unexpected(hitch.error());
    }
    Finish finish = knot.finish;
    if (knot.finish_counts_turns) {
        finish.count = hitch->turns - 1.0;
    }
    End allowance = lay_hitch(request, *hitch, finish);
    if (knot.friction == Friction::of_turns) {
        allowance.turns->load_past = load_past_turns(request, hitch->turns);
    }
    if (by_crossing) {
        add_clove_margin(allowance, request, *hitch, stitched_down);
    }
    allowance.steps = stitched_down ? knot.steps_stitched : knot.steps;
    return allowance;
}

} // namespace

Kinds hitches() {
    Kinds kinds;
    for (const HitchKnot& knot : knots) {
        kinds.push_back({{knot.name, knot.title, knot.datum, fibre_ropes, knot.fields},
                         [&knot](const Request& request) {
                             return work_out(knot, request);
                         }});
    }
    return kinds;
}

} // namespace libsplice
