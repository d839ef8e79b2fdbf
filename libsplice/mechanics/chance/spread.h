// Spreads of lengths and what they mean for the risk of coming out short.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

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

/// What was measured of several pieces made alike.
struct Sample {
    std::size_t count = 0;
    double mean = 0.0;
    double spread = 0.0; ///< standard deviation with one degree of freedom fewer; 0 for one piece
};

/// Mean and standard deviation of one value or more, in their unit.
[[nodiscard]] Sample sample_of(std::span<const double> values);

/// The number of standard deviations, estimated with `degrees` degrees of freedom (1 or more), that
/// a normally distributed value stays under with probability `probability` (strictly between 0 and
/// 1): the quantile of Student's t.
[[nodiscard]] double student_quantile(double probability, double degrees);

/// What the next piece stays under with probability `probability` (strictly between 0 and 1),
/// judged by a sample of two or more made alike: mean + t s sqrt(1 + 1/n), t with n - 1 degrees of
/// freedom. It is the limit of the next piece, not of the mean. One-sided prediction limit of the
/// normal law, from memory after Hahn & Meeker.
[[nodiscard]] double prediction_limit(const Sample& sample, double probability);

/// How many standard deviations the value farthest from the mean of `count` (3 or more) made alike
/// may lie from it, so that one of sound pieces lies farther with probability `level` only: the
/// two-sided limit of Grubbs' test, (n-1)/sqrt(n) sqrt(t^2/(n-2+t^2)), t the quantile of Student's
/// t at level/(2n) with n-2 degrees of freedom. Grubbs, Technometrics 11:1 (1969), from memory.
[[nodiscard]] double grubbs_limit(std::size_t count, double level);

/// The value that lies farther from the mean than that, by its place; nothing where none does, and
/// for fewer than three values.
[[nodiscard]] std::optional<std::size_t> outlier_of(std::span<const double> values, double level);

} // namespace libsplice
