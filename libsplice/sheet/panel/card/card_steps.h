// What is done at the bench and aboard, in the order of the work.
#pragma once

#include "libsplice/allowance/action.h"
#include "libsplice/cut/piece.h"
#include "libsplice/units/show.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice {

class Methods;

/// One thing to do.
struct CardStep {
    std::optional<LineEnd> end; ///< none for what concerns the whole line
    Action action = Action::plain;
    std::vector<std::size_t> at; ///< numbers of marks of its own end
    std::string text;
};

/// `marks 3, 5`; empty where the step names none, or all of them.
[[nodiscard]] std::string marks_named(const CardStep& step);

/// The piece's steps. Those of a kind of end that `methods` has a sheet for are referred to, run by
/// run. The piece can be cut.
[[nodiscard]] std::vector<CardStep> steps_of(const Piece& piece, const Methods& methods,
                                             UnitSystem units);

} // namespace libsplice
