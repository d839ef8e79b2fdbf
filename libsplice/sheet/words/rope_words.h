// A rope in the words of a shop: what it is made like and of, how thick, what colour.
#pragma once

#include "libsplice/catalogue/rope.h"
#include "libsplice/units/show.h"

#include <string>
#include <string_view>

namespace libsplice {

/// `double braid polyester, 6 mm, blue`: construction, fibre, nominal diameter and colour, never an
/// id. A rope that is sold in inches keeps them. `colour` is the job's and comes before the
/// table's.
[[nodiscard]] std::string rope_in_words(const Rope& rope, std::string_view colour,
                                        UnitSystem units);

/// The same without diameter and colour: `double braid polyester`.
[[nodiscard]] std::string make_of_rope(const Rope& rope);

/// The nominal diameter: `6 mm`, `2.5 mm`, `1/2 in`.
[[nodiscard]] std::string size_of_rope(const Rope& rope, UnitSystem units);

} // namespace libsplice
