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

constexpr FieldDeclaration own_turns{
    .name = "turns",
    .meaning = "turns round the line's own standing part; the rope lies once round the bow",
    .dimension = Dimension::count,
    .lowest = 2.0,
    .highest = 5.0,
    .default_text = "the table's figure, 2"};

constexpr std::array halyard_fields{field::held_pin, own_turns, field::knot_tail};
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
    double own_turns = 0.0;     ///< round its own standing part, in what the tables give for
                                ///< the rest of the hitch; 0: the turns lie on what it holds
    bool needs_thicker = false; ///< it slides on what is thinner than the rope
    Steps steps;
    Steps steps_stitched = {}; ///< with the tail stitched; of a hitch that has the field
};

constexpr std::array halyard_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Put the load-side mark at the bow and lead the end through it once."},
    Step{Action::tie,
         {MarkName::turns_end},
         "Lay {turns} turns with the end round the standing part, close together, beginning away "
         "from the bow and coming back to it."},
    Step{Action::tie,
         {MarkName::knot_far_side},
         "Bring the end out between the turns and the bow, and back through the inside of all the "
         "turns. It then lies along the standing part."},
    Step{Action::draw_up,
         {},
         "Draw the turns tight one by one, then the end, until the hitch sits hard on the bow with "
         "{tail} left."},
    Step{Action::load,
         {},
         "Load it and measure from the bow: it draws out most at its first load, and after a hard "
         "one it is cut off, not untied."}};

constexpr std::array buntline_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Pass the end round the pin with the load-side mark where the standing part meets it. "
         "Turns on the pin: {turns}."},
    Step{Action::tie,
         {MarkName::turns_end},
         "Take the end right round the standing part, going away from the pin."},
    Step{Action::tie,
         {MarkName::knot_far_side},
         "Make a second turn on the pin's side of the first. Bring the end out beneath it, so that "
         "the tail is trapped against the pin."},
    Step{Action::draw_up,
         {},
         "Draw up the two turns, slide them down on the pin and leave {tail}: under load it jams, "
         "and is cut off, not untied."}};

constexpr std::array round_turn_steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Lay the rope round the spar from the load-side mark, {turns} times, side by side: twice "
         "across its far side is a round turn."},
    Step{Action::tie,
         {MarkName::turns_end},
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
         {MarkName::turns_end},
         "Go on round the same way until {turns} turns lie there, and tuck the end under the "
         "crossing."},
    Step{Action::draw_up, {}, "Draw both parts up hard in line with the spar, {tail} left beyond."},
    Step{Action::tie,
         {MarkName::knot_far_side},
         "If the load comes and goes or the spar turns, put a half hitch round the standing part: "
         "it takes some 6 diameters of the tail."}};

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
         "Take the end over the spar, down behind it and out on the load side, the load-side mark "
         "at the spar."},
    Step{Action::tie,
         {MarkName::turns_end},
         "Cross the end in front of the standing part, take it round the spar the other way, and "
         "out down through the bight so made."},
    Step{Action::tie,
         {MarkName::knot_far_side},
         "Finish with one half hitch round the standing part: loaded on one part alone a cow hitch "
         "creeps."},
    Step{Action::draw_up, {}, "Draw up both turns and leave {tail}."}};

constexpr std::array rolling_hitch{
    Step{Action::tie,
         {MarkName::load_side},
         "Start at the load-side mark and take all but one of the {turns} turns towards the pull, "
         "each crossing over the standing part."},
    Step{Action::tie,
         {MarkName::turns_end},
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
              .finish = {Span::Form::turns, 2.0},
              .own_turns = 2.0,
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
              .steps = round_turn_steps},
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
              .needs_thicker = true,
              .steps = rolling_hitch},
};

constexpr std::string_view thinner_caution =
    "what this hitch grips is thinner than its own rope, and it slides there: tie it in a thinner "
    "rope";

bool is_stitched(const HitchKnot& knot, const Request& request) {
    const auto field = find_field(knot.fields, stitched.name);
    return field && request.fields.has(*field) && request.fields.at(*field) > 0.5;
}

HitchFields fields_of(const HitchKnot& knot) {
    const auto tail = find_field(knot.fields, field::knot_tail.name);
    Expects(tail.has_value());
    return {0, find_field(knot.fields, "turns"), *tail, knot.around};
}

/// The turns that the job counts lie round the standing part: what there is more of them than
/// `usual` has a row of its own, and the line goes once round what it holds.
void turn_round_own_part(HitchPart& hitch, double usual, Length diameter) {
    hitch.turns = 1.0;
    if (hitch.counted > usual) {
        hitch.own_turns = rope_in(turn_round(diameter, diameter), hitch.counted - usual);
    }
}

Result<End> work_out(const HitchKnot& knot, const Request& request) {
    const bool stitched_down = is_stitched(knot, request);
    const bool by_crossing = knot.friction == Friction::of_crossing;
    if (by_crossing && !stitched_down) {
        if (auto fault = needs_stitching(request)) {
            return Unexpected(*std::move(fault));
        }
    }
    auto hitch = read_hitch(request, fields_of(knot));
    if (!hitch) {
        return Unexpected(hitch.error());
    }
    if (knot.own_turns > 0.0) {
        turn_round_own_part(*hitch, knot.own_turns, request.rope.counting_diameter());
    }
    Finish finish = knot.finish;
    if (knot.finish_counts_turns) {
        finish.count = hitch->turns - 1.0;
    } else if (knot.own_turns > 0.0) {
        finish.count = hitch->counted;
    }
    End allowance = lay_hitch(request, *hitch, finish);
    if (knot.friction == Friction::of_turns) {
        allowance.turns->load_past = load_past_turns(request, hitch->turns);
    }
    if (by_crossing) {
        add_clove_margin(allowance, request, *hitch, stitched_down);
    }
    if (knot.needs_thicker && hitch->turn.around < request.rope.counting_diameter()) {
        allowance.add(Caution{thinner_caution, hitch->beyond.source});
    }
    allowance.steps = stitched_down ? knot.steps_stitched : knot.steps;
    return allowance;
}

} // namespace

Kinds hitches() {
    Kinds kinds;
    for (const HitchKnot& knot : knots) {
        kinds.push_back({{.name = knot.name,
                          .title = knot.title,
                          .datum = knot.datum,
                          .constructions = fibre_ropes,
                          .fields = knot.fields,
                          .families = {"hitches"}},
                         [&knot](const Request& request) {
                             return work_out(knot, request);
                         }});
    }
    return kinds;
}

} // namespace libsplice
