// round-turn-two-half-hitches: two turns take the load, two half hitches hold the rest.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { spar, turns, stub };
constexpr std::array fields{field::spar, field::turns_of("the table's figure, 2"),
                            field::knot_stub};

constexpr std::array steps{
    Step{Action::tie,
         {MarkName::load_side},
         "Take {turns} turns round the spar from the load-side mark, side by side."},
    Step{Action::tie,
         {MarkName::load_side},
         "Make a half hitch round the standing part close to the spar, and a second one the same "
         "way round."},
    Step{Action::draw_up,
         {},
         "Draw the half hitches up against the turns, with {stub} left beyond."},
    Step{Action::load,
         {},
         "Load it slowly and see that the turns take the load before the half hitches do."}};

Result<Allowance> work_out(const Request& request) {
    auto allowance = hitch(request, {spar, turns, stub}, {Span::Form::half_hitches, 2.0}, steps);
    if (allowance) {
        add_load_past(*allowance, request);
    }
    return allowance;
}

} // namespace

Kind round_turn_two_half_hitches() {
    return {{"round-turn-two-half-hitches", "turns round a spar or ring and two half hitches",
             "load side of the spar", fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
