// Whether friction alone holds a hitch of crossing turns.
#pragma once

#include "libsplice/allowance/parts/hitch_part.h"

namespace libsplice {

/// Code::field_missing in rope in which the crossing is known to slip: its tail has to be stitched,
/// with field `stitched`.
[[nodiscard]] std::optional<Fault> needs_stitching(const Request& request);

/// Values `hitch_margin` and, where friction alone does not hold and nothing is stitched,
/// `extra_turns` with a caution. Nothing where the rope's friction is not known. Turns beyond the
/// hitch's own two let less of the load past.
void add_clove_margin(End& allowance, const Request& request, const HitchPart& hitch,
                      bool is_stitched);

} // namespace libsplice
