// Spreads of lengths and what they mean for the risk of coming out short.
#pragma once

namespace libsplice {

/// The number of standard deviations that a normally distributed length stays under with
/// probability `probability` (strictly between 0 and 1).
[[nodiscard]] double normal_quantile(double probability);

/// Probability that a normally distributed length lies farther than `tolerance` from its mean, to
/// either side. Both in the same unit; a spread of 0 never falls outside.
[[nodiscard]] double chance_outside(double tolerance, double spread);

/// Standard deviation of a value of which only the limits, `half_width` to either side, are known
/// and which may lie anywhere between them: half width / sqrt(3).
[[nodiscard]] double rectangular_spread(double half_width);

} // namespace libsplice
