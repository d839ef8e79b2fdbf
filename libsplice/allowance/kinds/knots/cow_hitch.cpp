// cow-hitch: a turn over the spar each way, both parts out on the load side.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { spar, stub };
constexpr std::array fields{field::spar, field::knot_stub};

constexpr std::array steps{Step{Action::tie,
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
                           Step{Action::draw_up, {}, "Draw up both turns and leave {stub}."}};

Result<Allowance> work_out(const Request& request) {
    return hitch(request, {spar, std::nullopt, stub}, {Span::Form::half_hitches, 1.0}, steps);
}

} // namespace

Kind cow_hitch() {
    return {{"cow-hitch", "two opposed turns round a spar or ring", "load side of the spar",
             fibre_ropes, fields},
            work_out};
}

} // namespace libsplice
