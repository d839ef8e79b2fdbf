// What a line holds, and how that compares with what is asked of it.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bind/load/load.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// What the strength of a line rests on.
struct StrengthOf {
    const Book& book;
    const Rules& rules; ///< of every kind, for its rope
    const Rope& rope;
    const BoundEnds& ends;
    const std::optional<RouteLength>& route;
    const std::optional<StatedLoad>& load;
    bool carries_person = false;
};

/// From the load, the rope, what its ends and knots retain and the bends over pins and sheaves.
/// Code::overloaded at the column load if the line does not hold it, with what would. A strength
/// that is only a cautious one for any rope of its sort never refuses a load, and says nothing of a
/// line that carries a person.
[[nodiscard]] Strength bind_strength(const StrengthOf& of, CellReader& cells);

} // namespace libsplice
