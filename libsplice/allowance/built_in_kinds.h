// The built-in kinds, in one list.
#pragma once

#include "libsplice/allowance/kind.h"

#include <vector>

namespace libsplice {

/// Every built-in kind, in the order in which the documentation lists them.
[[nodiscard]] std::vector<Kind> built_in_kinds();

Kind adjustable_eye();
Kind bare();
Kind barrel_noose();
Kind bowline();
Kind buntline_hitch();
Kind buried_eye();
Kind clipped_eye();
Kind clove_hitch();
Kind core_eye();
Kind core_to_core();
Kind cover_core_eye();
Kind cover_over_join();
Kind cow_hitch();
Kind crimped_end();
Kind double_bowline();
Kind double_fisherman();
Kind double_overhand();
Kind end_for_end();
Kind endless_loop();
Kind ferrule_eye();
Kind figure_eight();
Kind figure_eight_loop();
Kind halyard_hitch();
Kind heat_sealed();
Kind larked_eye();
Kind lashing();
Kind locked_eye();
Kind long_splice();
Kind overhand();
Kind overhand_loop();
Kind parallel_core_eye();
Kind ring_eye();
Kind rolling_hitch();
Kind round_turn_two_half_hitches();
Kind seized_eye();
Kind sewn_join();
Kind sheet_bend();
Kind short_splice();
Kind soft_shackle();
Kind stevedore();
Kind stitched_eye();
Kind stopper_ball();
Kind stripped_eye();
Kind swaged_fitting();
Kind tucked_eye();
Kind two_eye_strop();
Kind whipped();

} // namespace libsplice
