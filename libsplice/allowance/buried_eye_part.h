// What all eyes with a buried tail have in common: the eye, the bury and the stitching, put
// together.
#pragma once

#include "libsplice/allowance/bury_part.h"
#include "libsplice/allowance/eye_part.h"

namespace libsplice {

/// The allowance of an eye whose tail is led inside `rope` (the whole rope, or the core that is
/// spliced), all but its steps. Faults are those of read_eye() and read_bury().
[[nodiscard]] Result<Allowance> eye_with_bury(const Request& request, EyeFields eye_fields,
                                              BuryFields bury_fields, Length rope);

} // namespace libsplice
