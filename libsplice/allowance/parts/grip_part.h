// The grip of the braid on a buried tail: a cross-check beside the published length.
#pragma once

#include "libsplice/allowance/parts/bury_part.h"

namespace libsplice {

/// Values `grip_margin` with its cautious and its generous end, and all that was assumed for it:
/// friction, braid angle, packing and the tail's share of the load at the throat. A caution where
/// the cautious end, friction and angle both at their lowest, is under 1. Nothing where no source
/// gives an assumption for this rope. It changes no length and stands in for no published minimum.
void add_grip(End& allowance, const BuryPart& bury, const Request& request);

} // namespace libsplice
