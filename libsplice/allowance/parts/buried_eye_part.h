// What all eyes with a buried tail have in common: the eye, the bury and the stitching, put
// together.
#pragma once

#include "libsplice/allowance/parts/bury_part.h"
#include "libsplice/allowance/parts/eye_part.h"

namespace libsplice {

/// The allowance of an eye whose tail is led inside `rope` (the whole rope, or the core that is
/// spliced), all but its steps. Faults are those of read_eye() and read_bury().
[[nodiscard]] Result<End> eye_with_bury(const Request& request, EyeFields eye_fields,
                                        BuryFields bury_fields, Length rope);
/// The same of an eye and a bury that are worked out already.
[[nodiscard]] End eye_with_bury(const Request& request, const EyePart& eye, const BuryPart& bury);
/// Values for the lock stitching: where it starts and ends beyond the throat.
void add_stitching(End& allowance, const Request& request, Length rope);

} // namespace libsplice
