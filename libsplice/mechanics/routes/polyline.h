// Positions on the boat and what is measured between them.
#pragma once

#include "libsplice/units/quantity.h"

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace libsplice {

/// x, y and z from a point of the user's choice; z is 0 throughout for a way in one plane.
using Position = std::array<Length, 3>;

/// From one position straight to another.
[[nodiscard]] Length distance_between(const Position& from, const Position& to);

/// Along straight legs from the first position to the last; 0 for fewer than two.
[[nodiscard]] Length polyline_length(std::span<const Position> positions);

/// `count` positions (2 or more) spaced evenly along the legs of a polyline of two or more
/// positions; the first and the last are its ends. On a polyline of no length all lie in one place.
[[nodiscard]] std::vector<Position> spaced_evenly(std::span<const Position> polyline,
                                                  std::size_t count);

/// How a way turns at one of its positions.
struct Deflection {
    Angle angle; ///< 0: straight on, pi: right back
    std::array<double, 3>
        axis{}; ///< about which it turns, right-handed; as long as the angle's sine
};

/// The turn at `at` on the way from `before` to `after`, both of which lie elsewhere.
[[nodiscard]] Deflection deflection(const Position& before, const Position& at,
                                    const Position& after);

} // namespace libsplice
