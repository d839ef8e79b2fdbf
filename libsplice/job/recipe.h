// The part of a line that decides how it is made, as one key.
#pragma once

#include "libsplice/job/line.h"

#include <string>

namespace libsplice {

/// Writes the recipe of `line` over `recipe` (see JobLine::recipe). Each cell stands with what it
/// is and how long it is, so that no two different lines can run together to the same key.
void write_recipe(const JobLine& line, std::string& recipe);

} // namespace libsplice
