#include "libsplice/mechanics/spread.h"

#include <boost/math/distributions/normal.hpp>
#include <gsl/assert>

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

} // namespace libsplice
