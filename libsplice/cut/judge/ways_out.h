// What a rigger can write instead, if a line is too short for its buries.
#pragma once

#include "libsplice/cut/bind/line_binder.h"

#include <string>

namespace libsplice {

/// Ways to make a line that is too short for what its job asks for: a published shorter bury, a
/// loop of one to three turns, a lashing. Each has been worked out and can be made; it names the
/// fields to write and the rope that it takes. At most three, as the end of a sentence. `line` is
/// the job's line as it was bound.
[[nodiscard]] std::string ways_out(const Book& book, LineBinder& binder, const JobLine& job,
                                   const BoundLine& line, Nanometres finished);

} // namespace libsplice
