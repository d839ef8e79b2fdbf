// What eyes and joins with a buried tail have in common: the bury, the stitching, and the grip, put
// together.
#pragma once

#include "libsplice/allowance/parts/bury_part.h"
#include "libsplice/allowance/parts/eye_part.h"

namespace libsplice {

/// An eye whose tail is led inside `diameter` (the whole rope, or the core that is spliced), all
/// but its steps. Faults are those of read_eye() and read_bury().
[[nodiscard]] Result<End> eye_with_bury(const Request& request, EyeFields eye_fields,
                                        BuryFields bury_fields, Length diameter);
/// The same of an eye and a bury that are worked out already. `entry` is how far beyond the throat
/// the tail goes in.
[[nodiscard]] End eye_with_bury(const Request& request, const EyePart& eye, const BuryPart& bury,
                                Length entry = {});

/// An eye with a buried tail and the crossing that closes up at first load, all but its steps.
[[nodiscard]] Result<End> locked_eye_with_bury(const Request& request, EyeFields eye_fields,
                                               BuryFields bury_fields);

/// One side of a join in which each end is led inside the other: rows, marks and facts of the bury,
/// and the mark `meets`, where the two ends meet.
[[nodiscard]] End buried_side(const Request& request, const BuryPart& bury, MarkName meets);

/// The lock stitching: where it starts and ends beyond the throat.
void add_stitching(End& end, const Request& request, Length diameter);

/// The grip of the braid on the tail, with its cautious and its generous end, and all that was
/// assumed for it: friction, braid angle, packing and the tail's share of the load at the throat. A
/// caution where the cautious end, friction and angle both at their lowest, is under 1. Nothing
/// where no source gives an assumption for this rope. It changes no length and replaces no
/// published minimum.
void add_grip(End& end, const BuryPart& bury, const Request& request);

} // namespace libsplice
