// cover-core-eye: in double braid the cover's tail goes into the core and the core's into the
// cover.
#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/parts/covered_part.h"

namespace libsplice {

namespace {

constexpr FieldDeclaration tail_field{"tail",
                                      "from the end to the reference mark, where the eye begins",
                                      Dimension::length,
                                      0.005,
                                      20.0,
                                      "the rule's tail"};
constexpr FieldDeclaration exit_field{
    "exit",
    "along the core, from where the cover's tail enters it to where it comes out",
    Dimension::length,
    0.005,
    40.0,
    "the rule's exit"};

enum Field : std::size_t { eye, pin, tail, exit };
constexpr std::array fields{field::eye, field::pin, tail_field, exit_field};

constexpr std::array<std::string_view, 9> steps{
    "Tie a slip knot {slip_knot} from the end. Tape the end; mark the cover at the near throat, "
    "the reference, and at the far throat, where the core comes out.",
    "Bend the rope sharply at the far throat, part the cover's strands and draw the core out from "
    "the end to there. Mark the core where it leaves the cover.",
    "Slide the cover back towards the knot to bare more core. Mark the core's entry {entry} on "
    "from its first mark, and the exit beyond it.",
    "Thin the cover's tail from the taper-start mark. Lead it into the core at the entry, along "
    "inside, and out at the exit, until the reference meets the entry.",
    "Lead the core's tail into the cover at the far throat and out beyond where the cover's tail "
    "ends, clear of the eye.",
    "Draw both crossings together until they lie on one another, then thin the core's tail and cut "
    "it where it will end.",
    "Smooth the eye from its crown on both sides until both tails are swallowed. Hold the crossing "
    "and milk the slack cover down from the slip knot, harder each time, until the crossing goes "
    "in and the throat is reached.",
    "Stitch through the throat, across and back, so that an unloaded eye cannot creep out. Undo "
    "the slip knot.",
    "Load the eye and measure it, then smooth the cover to the line's far end and trim there what "
    "comes out.",
};

Result<Allowance> work_out(const Request& request) {
    auto allowance = covered_eye(request, {{eye, pin}, tail, exit}, ExitFrom::core_entry);
    if (allowance) {
        add_small_rope_caution(*allowance, request,
                               "in rope this thin cover and core are too fine to be led into each "
                               "other: consider a stripped-eye or a knot");
        allowance->steps = steps;
    }
    return allowance;
}

} // namespace

Kind cover_core_eye() {
    return {{"cover-core-eye", "eye splice in double braid, cover and core into each other",
             "inside of the eye's crown", Constructions(Construction::double_braid), fields},
            work_out};
}

} // namespace libsplice
