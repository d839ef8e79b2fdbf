// The part of a line that decides how it is made, as one key.
#pragma once

#include "libsplice/job/line.h"

#include <string>

namespace libsplice {

/// Writes the plan_key of `line` over `plan_key` (see JobLine::plan_key). Each cell stands with
/// what it is and how long it is, so that no two different lines can run together to the same key.
void write_plan_key(const JobLine& line, std::string& plan_key);

} // namespace libsplice
