// What a way on the boat takes of rope, or why the rope cannot run that way.
#pragma once

#include "libsplice/units/quantity.h"

#include <cstddef>
#include <variant>

namespace libsplice {

/// The rope's centreline along a way.
struct WayLength {
    Length straight;       ///< in its straight parts
    Length wrapped;        ///< in its arcs round sheaves, pins or rails
    std::size_t turns = 0; ///< how many arcs there are

    [[nodiscard]] Length total() const { return straight + wrapped; }
};

/// Why a rope cannot run a way. What `at`, `needed` and `there` of the fault mean stands beside
/// each.
enum class WayError {
    too_few,          ///< `at` is how many points, legs, loops, pairs or parts were given
    same_place,       ///< point `at` lies where the one before it lies
    sheave_at_end,    ///< point `at`, the first or last, has a sheave; an end is made there
    turns_right_back, ///< the line turns by half a turn round the sheave of point `at`
    bends_overlap, ///< the leg to point `at` is `there` long, the bends at its ends take `needed`
    rows_unlike,   ///< the second row has `at` eyelets, which does not suit the first
    turns_one_way, ///< at pin `at` a zigzag turns the same way as at the pin before
    cannot_pass,   ///< pin `at` lies `there` from the one before; to pass takes `needed`
    rail_too_near, ///< the eyelet lies `there` from the rail's centre, nearer than `needed`
    blocks_meet_eased,  ///< eased, the axles are `there` apart; sheave `at` and the rope take
                        ///< `needed`
    blocks_meet_hauled, ///< the same, hauled
    hauled_past_run,    ///< hauled, the axles are `there` apart; eased they are only `needed`
    becket_past_block,  ///< the dead end lies `there` nearer, which is past the block at `needed`
};

/// A fault of a way, for the caller to put in words and place. Points are counted from 0.
struct WayFault {
    WayError error;
    std::size_t at = 0;
    Length needed = {};
    Length there = {};
};

/// What was asked for, or the fault in its place.
template <class T>
using OrWayFault = std::variant<T, WayFault>;

/// Lengths that differ by less are taken for equal, so that rounding decides nothing.
inline constexpr Length as_good_as_nothing{1e-9};

} // namespace libsplice
