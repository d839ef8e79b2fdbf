// A purchase: how much rope its parts, sheaves and tail take, eased and hauled.
#pragma once

#include "libsplice/mechanics/routes/way.h"

#include <optional>
#include <vector>

namespace libsplice {

/// A sheave and how far round it the rope goes.
struct RigSheave {
    Length diameter; ///< where the rope lies
    Angle turn;      ///< as it is rigged: mostly half a turn, at the last one often a quarter
};

/// A purchase as it is rigged. Lengths are 0 or more.
struct Purchase {
    std::size_t parts = 1;        ///< of rope between the blocks
    Length run;                   ///< from axle to axle, eased
    std::optional<Length> hauled; ///< from axle to axle, hauled, if that state matters
    Length becket; ///< how much nearer the other block the dead end lies than the axle
    std::vector<RigSheave> sheaves;
    Length lead; ///< from the last sheave to where the line is made fast
    Length tail; ///< beyond that, eased
};

/// What a purchase takes.
struct PurchaseLength {
    WayLength way; ///< lead and tail in its straight parts
    Length tail_eased;
    Length tail_hauled; ///< the same as eased if no hauled state was given
};

/// A plain purchase of `parts` parts with `run` from axle to axle, eased: the dead end at an axle,
/// a half turn round one sheave of diameter `sheave` fewer than there are parts, `tail` from the
/// last.
[[nodiscard]] Purchase plain_purchase(std::size_t parts, Length run, Length sheave, Length tail);

/// The rope's centreline in a purchase of rope of diameter `diameter`:
/// parts run - becket + sum of (sheave + rope)/2 turn + lead + tail; hauled, the tail is longer by
/// parts (run - hauled). The parts count as parallel to the line of axles. Faults: too_few (no
/// parts), blocks_meet_eased and blocks_meet_hauled (the axles nearer than the largest sheave and
/// the rope), hauled_past_run, becket_past_block (the becket more than the run). Elementary
/// geometry.
[[nodiscard]] OrWayFault<PurchaseLength> purchase_length(const Purchase& purchase, Length diameter);

} // namespace libsplice
