// The locked crossing: an eye with a buried tail whose two parts pass through each other.
#pragma once

#include "libsplice/allowance/parts/buried_eye_part.h"

namespace libsplice {

/// An eye with a buried tail and the crossing that closes up at first load, all but its steps.
[[nodiscard]] Result<End> locked_eye_with_bury(const Request& request, EyeFields eye_fields,
                                               BuryFields bury_fields);

} // namespace libsplice
