// The normal distribution: from spreads to a chance, and from a risk to a length.
#include "libsplice/mechanics/chance/spread.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <gsl/assert>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace libsplice {

double normal_quantile(double probability) {
    Expects(probability > 0.0 && probability < 1.0);
    return boost::math::quantile(boost::math::normal_distribution<double>(), probability);
}

double chance_outside(double tolerance, double spread) {
    Expects(tolerance >= 0.0 && spread >= 0.0);
    if (!(spread > 0.0)) {
        return 0.0;
    }
    const boost::math::normal_distribution<double> normal;
    return 2.0 * boost::math::cdf(boost::math::complement(normal, tolerance / spread));
}

double rectangular_spread(double half_width) {
    Expects(half_width >= 0.0);
    return half_width * std::numbers::inv_sqrt3;
}

Sample sample_of(std::span<const double> values) {
    Expects(!values.empty());
    const auto count = static_cast<double>(values.size());
    double sum = 0.0;
    for (const double value : values) {
        sum += value;
    }
    const double mean = sum / count;
    double squares = 0.0;
    for (const double value : values) {
        squares += (value - mean) * (value - mean);
    }
    const double spread = values.size() > 1 ? std::sqrt(squares / (count - 1.0)) : 0.0;
    return {values.size(), mean, spread};
}

double student_quantile(double probability, double degrees) {
    Expects(probability > 0.0 && probability < 1.0 && degrees >= 1.0);
    return boost::math::quantile(boost::math::students_t_distribution<double>(degrees),
                                 probability);
}

double prediction_limit(const Sample& sample, double probability) {
    Expects(sample.count >= 2);
    const auto count = static_cast<double>(sample.count);
    return sample.mean + student_quantile(probability, count - 1.0) * sample.spread *
                             std::sqrt(1.0 + 1.0 / count);
}

double grubbs_limit(std::size_t count, double level) {
    Expects(count >= 3 && level > 0.0 && level < 1.0);
    const auto n = static_cast<double>(count);
    const double t = student_quantile(1.0 - level / (2.0 * n), n - 2.0);
    return (n - 1.0) / std::sqrt(n) * std::sqrt(t * t / (n - 2.0 + t * t));
}

std::optional<std::size_t> outlier_of(std::span<const double> values, double level) {
    if (values.size() < 3) {
        return std::nullopt;
    }
    const Sample sample = sample_of(values);
    const auto from_mean = [&](double value) {
        return std::abs(value - sample.mean);
    };
    const auto farthest = std::ranges::max_element(values, {}, from_mean);
    if (from_mean(*farthest) <= grubbs_limit(sample.count, level) * sample.spread) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(farthest - values.begin());
}

} // namespace libsplice
