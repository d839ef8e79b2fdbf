// A length together with the way it was written.
#pragma once

#include "libsplice/units/quantity.h"

namespace libsplice {

/// How a length was written, which decides e.g. which fid rule holds for a rope's diameter.
struct WrittenLength {
    Length length;
    bool imperial = false; ///< written in inches or feet
};

} // namespace libsplice
