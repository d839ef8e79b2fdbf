// The built-in kinds, in one list.
#pragma once

#include "libsplice/allowance/kind.h"

#include <vector>

namespace libsplice {

/// Every built-in kind, in the order in which the documentation lists them.
[[nodiscard]] std::vector<Kind> built_in_kinds();

Kind bare();
Kind bowline();
Kind buried_eye();
Kind clipped_eye();
Kind figure_eight();
Kind locked_eye();
Kind stripped_eye();
Kind tucked_eye();
Kind whipped();

} // namespace libsplice
