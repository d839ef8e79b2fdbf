// What rules ask of rope that carries a person, set beside what the line has.
#pragma once

#include "libsplice/cut/piece.h"

namespace libsplice {

/// The tables' rules of the kind `carries_person`, for a line that carries one.
void bind_person_rules(const Book& book, LinePlan& plan);

} // namespace libsplice
