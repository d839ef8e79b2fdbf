#include "libsplice/allowance/built_in_kinds.h"

namespace libsplice {

std::vector<Kind> built_in_kinds() {
    std::vector<Kind> kinds;
    for (const auto make : {locked_eye,
                            buried_eye,
                            stripped_eye,
                            core_eye,
                            larked_eye,
                            ring_eye,
                            adjustable_eye,
                            stitched_eye,
                            seized_eye,
                            endless_loop,
                            two_eye_strop,
                            soft_shackle,
                            tucked_eye,
                            cover_core_eye,
                            parallel_core_eye,
                            clipped_eye,
                            ferrule_eye,
                            swaged_fitting,
                            crimped_end,
                            figure_eight,
                            double_overhand,
                            overhand,
                            stopper_ball,
                            stevedore,
                            bowline,
                            figure_eight_loop,
                            overhand_loop,
                            barrel_noose,
                            double_bowline,
                            halyard_hitch,
                            buntline_hitch,
                            round_turn_two_half_hitches,
                            clove_hitch,
                            cow_hitch,
                            rolling_hitch,
                            lashing,
                            sheet_bend,
                            double_fisherman,
                            cover_over_join,
                            sewn_join,
                            core_to_core,
                            end_for_end,
                            short_splice,
                            long_splice,
                            whipped,
                            heat_sealed,
                            bare}) {
        kinds.push_back(make());
    }
    return kinds;
}

} // namespace libsplice
