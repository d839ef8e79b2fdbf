// Which stretches of a rope's centreline come near each other.
#pragma once

#include "libsplice/mechanics/knots/curve.h"

#include <cstdint>
#include <vector>

namespace libsplice {

/// Two segments by their numbers along the curve, the lower one first.
struct NearPair {
    std::uint32_t first = 0;
    std::uint32_t second = 0;

    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the defaulted comparison for one
    friend constexpr auto operator<=>(const NearPair&, const NearPair&) = default;
};

/// Every pair of segments whose boxes come within `reach` of each other and that lie `apart`
/// segments or more from each other along the curve, in order.
[[nodiscard]] std::vector<NearPair> near_pairs(const Curve& curve, double reach, std::size_t apart);

} // namespace libsplice
