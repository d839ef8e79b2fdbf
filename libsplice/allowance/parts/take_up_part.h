// What a hollow braid shortens over a tail led into it, with the spread of its constant.
#pragma once

#include "libsplice/allowance/parts/parts.h"
#include "libsplice/mechanics/rope/braid.h"

#include <span>

namespace libsplice {

/// K of the braid that a tail is led into: what the shop measured for the kind, else the rope's
/// own, else that of the tables. The figure's spread is that of K. Code::figure_missing.
[[nodiscard]] Result<Figure> read_braid_constant(const Request& request);

/// Host used beyond the tail's own length. Its spread is what that of K does; where K has
/// none, the share of the take-up that the tables' spread is of the take-up which they
/// state it for. `too_thick` where the tail does not go in; Code::figure_missing.
[[nodiscard]] Result<SourcedLength> read_take_up(const Request& request,
                                                 std::span<const BuriedPart> tail, Fault too_thick);

/// Puts `usual` in place of the tables' share as the spread of a take-up; the spread of
/// a K that has one stays.
void set_usual_spread(SourcedLength& take_up, const Request& request, Length usual);

} // namespace libsplice
