// barrel-noose: a sliding loop held by a barrel of two turns round the standing part.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/loop_part.h"

namespace libsplice {

namespace {

enum Field : std::size_t { loop, pin, stub };
constexpr std::array fields{field::loop_of("2 times the pin, at least 6 D"), field::pin,
                            field::stub};

constexpr std::array steps{
    Step{Action::fit_first,
         {},
         "Pass the end through the fitting and back to the standing part; the crown mark comes to "
         "the fitting."},
    Step{
        Action::tie,
        {MarkName::loop_near},
        "Take the end twice round the standing part and its own leg, working towards the fitting."},
    Step{Action::tie,
         {MarkName::loop_near},
         "Bring it through both turns, away from the fitting, and draw the barrel up until {stub} "
         "is left."},
    Step{Action::draw_up,
         {},
         "Slide the barrel down on its pin: the loop is {eye} from its crown to the barrel when it "
         "holds."},
    Step{Action::load, {}, "Load it, slide it down again and measure: a noose grips by closing."}};

constexpr std::array steps_elastic{
    Step{Action::fit_first,
         {},
         "Pass the end through the fitting and back beside the cord; marks are made with the cord "
         "slack."},
    Step{Action::tie,
         {MarkName::loop_near},
         "Take the end twice round the cord, working towards the fitting, and through both turns."},
    Step{Action::draw_up,
         {},
         "Draw the barrel up with the cord stretched, {stub} left beyond it, then slide it down on "
         "the fitting."},
    Step{Action::measure,
         {},
         "Let go, and measure the loop at rest: {eye} from its crown to the barrel."}};

constexpr std::string_view closes_caution =
    "the noose closes on whatever it holds, and the line comes out longer: give the pin";

Result<Allowance> work_out(const Request& request) {
    const bool elastic = request.rope.construction == Construction::shock_cord;
    auto allowance =
        loop_knot(request, {loop, pin, stub}, {Span::Form::turns, 2.0},
                  elastic ? std::span<const Step>(steps_elastic) : std::span<const Step>(steps));
    if (allowance && !request.fields.has(pin)) {
        allowance->add(Caution{closes_caution, cited_geometry});
    }
    return allowance;
}

} // namespace

Kind barrel_noose() {
    return {{"barrel-noose", "sliding loop on a barrel knot",
             "inside of the loop's crown, the noose closed on its pin", ropes_and_shock_cord,
             fields},
            work_out};
}

} // namespace libsplice
