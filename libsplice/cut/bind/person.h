// What rules ask of rope that carries a person, and whether its ends may carry one.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// If the line carries a person: the tables' rules for such rope, and an end that must not carry a
/// person, which is added to `cells` as Code::refused_for_person.
[[nodiscard]] PersonVerdict bind_person(bool carries, const Book& book, const Rope& rope,
                                        const BoundEnds& ends, CellReader& cells);

} // namespace libsplice
