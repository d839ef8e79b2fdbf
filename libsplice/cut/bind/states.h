// The states a line is in: as asked for, at the reference tension, and on the bench.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

namespace libsplice {

/// What the job says of the state that its length holds in.
struct StateAsked {
    Tension tension;
    bool prestretched = false;
    bool wash = false;
};
/// From the columns tension, prestretched and wash.
[[nodiscard]] StateAsked read_state(CellReader& cells);

/// What the states of a line rest on.
struct StatesOf {
    const StateAsked& asked;
    const Rules& rules; ///< of every kind, for its rope
    const CutSettings& settings;
    const Rope& rope;
    const BoundEnds& ends;
    Fit fit{};
    bool eased = false; ///< the length is that of a state which carries no load
};

/// Works the states out; of elastic also from the column stretch. Code::measured_relaxed,
/// Code::slack_for_exact, Code::stretch_missing, Code::strength_missing, Code::beyond_stretch;
/// Code::cannot_be_both for a `stretch` that does not go with the rope or with a tension.
[[nodiscard]] States bind_states(const StatesOf& of, CellReader& cells);

/// What the rope does at the pulls of a line whose states are known; `load` is the greatest in use.
[[nodiscard]] PullsOfLine bind_pulls(const Rope& rope, const States& states,
                                     const std::optional<Force>& load);

} // namespace libsplice
