// Strength of a wire bent round a pin, between the ratios that are printed.
#pragma once

#include <optional>
#include <span>

namespace libsplice {

/// One printed point: the pin's diameter over the wire's, and the share of strength kept there.
struct BendPoint {
    double ratio = 0.0;
    double share = 0.0;
};

/// The share of its straight strength that wire keeps over a pin of `ratio` times its diameter.
/// Between two of the `points`, which ascend, the share runs evenly with the logarithm of the
/// ratio; beyond the last it is the last one's. Nothing below the first point, or without points.
[[nodiscard]] std::optional<double> retained_in_bend(std::span<const BendPoint> points,
                                                     double ratio);

} // namespace libsplice
