// The first of an end at true size, to lay the rope along.
#pragma once

#include "libsplice/sheet/panel/card/card.h"

#include <string>

namespace libsplice {

/// How much of an end fits on paper at true size.
inline constexpr double strip_millimetres = 190.0;

/// A strip 190 mm wide: the end from its cut end on, 1:1, its marks numbered, the rope drawn as
/// thick as it is, and a bar of 100 mm to check the printer by. Nothing is added where fewer than
/// two marks lie within the strip. `diameter` is the rope's. Returns the height, in millimetres.
double append_strip(std::string& into, const CardEnd& end, Length diameter);

} // namespace libsplice
