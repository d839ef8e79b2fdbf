// Whether a piece can be made and what to say of it: room, tolerance, strength.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/cut/piece.h"

#include <optional>

namespace libsplice {

/// Code::buries_overlap or Code::nothing_left where the rope between the ends does not suffice; the
/// fault names the finished length that would, and what else could be made.
[[nodiscard]] std::optional<Fault> check_room(const LinePlan& plan, const Piece& piece,
                                              Nanometres finished);

/// The chance that the finished length falls outside the tolerance once the check has read right;
/// nothing where no tolerance is given.
[[nodiscard]] std::optional<double> chance_outside_tolerance(const LinePlan& plan,
                                                             const Piece& piece);

/// Sets the retained strength of the weaker end and the design factor.
void find_strength(const LinePlan& plan, Piece& piece);

} // namespace libsplice
