// Pulls, shares and tensions in the words of the bench.
#pragma once

#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// A pull as it is read off a spring balance: `4.5 kg` or `10 lb`.
[[nodiscard]] std::string show_pull(Force force, UnitSystem units);
/// A share as a percentage: `90 %`.
[[nodiscard]] std::string show_share(double share);
/// `the reference tension`, `20 % of breaking strength` or `600 N (61 kgf)`.
[[nodiscard]] std::string show_tension(const Tension& tension, UnitSystem units);

} // namespace libsplice
