// Why a rope cannot run its way, in words.
#pragma once

#include "libsplice/mechanics/routes/way.h"

#include <string>

namespace libsplice {

/// A sentence that says what is wrong and what to do.
[[nodiscard]] std::string way_fault_text(const WayFault& fault);

} // namespace libsplice
