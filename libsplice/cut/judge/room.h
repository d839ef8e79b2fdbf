// Whether the rope between the ends suffices for what is made there.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/piece.h"

#include <optional>

namespace libsplice {

/// Code::buries_overlap or Code::nothing_left where the rope between the ends does not suffice; the
/// fault names the finished length that would.
[[nodiscard]] std::optional<LineFault> check_room(const BoundLine& line, const Piece& piece,
                                                  Nanometres finished);

} // namespace libsplice
