// The chance that a line falls outside its tolerance.
#pragma once

#include "libsplice/cut/piece.h"

#include <optional>

namespace libsplice {

/// The chance that the finished length falls outside the tolerance once the check has read right;
/// nothing where no tolerance is given.
[[nodiscard]] std::optional<double> chance_outside_tolerance(const BoundLine& line,
                                                             const Piece& piece);

} // namespace libsplice
