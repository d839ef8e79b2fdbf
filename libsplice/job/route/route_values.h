// Values of a route, from text to quantities within their limits.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/units/unit.h"

#include <optional>
#include <string_view>

namespace libsplice {

/// A length of a route, from `lowest` to 100 km, which may be negative where `lowest` is. `bare`
/// is the unit of a bare number. Code::not_a_length, Code::value_out_of_range, without a place.
[[nodiscard]] Result<Length> read_route_length(std::string_view text, Length lowest,
                                               std::optional<LengthUnit> bare = std::nullopt);

/// The farthest that a point may lie from the route's origin.
inline constexpr Length farthest = metres(100'000.0);

} // namespace libsplice
