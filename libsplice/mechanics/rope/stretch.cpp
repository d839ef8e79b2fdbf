// Strain between the points of a curve, and lengths at one pull from those at another.
#include "libsplice/mechanics/rope/stretch.h"

#include <cmath>

// Boost's pchip calls isnan without its namespace.
using std::isnan;

#include <boost/math/interpolators/pchip.hpp>
#include <gsl/assert>

#include <utility>

namespace libsplice {

namespace {

/// The exponent of a power curve.
double exponent(std::span<const StretchPoint> points) {
    return std::log(points[1].strain / points[0].strain) /
           std::log(points[1].load / points[0].load);
}

/// Between the points by the cubics of Fritsch and Carlson, which rise as the points do.
double between(std::span<const StretchPoint> points, double load) {
    std::vector<double> loads{0.0};
    std::vector<double> strains{0.0};
    for (const StretchPoint& point : points) {
        loads.push_back(point.load);
        strains.push_back(point.strain);
    }
    const boost::math::interpolators::pchip<std::vector<double>> curve(std::move(loads),
                                                                       std::move(strains));
    return curve(load);
}

} // namespace

bool rises(std::span<const StretchPoint> points) {
    StretchPoint before;
    for (const StretchPoint& point : points) {
        if (!(point.load > before.load) || !(point.strain > before.strain)) {
            return false;
        }
        before = point;
    }
    return true;
}

StretchCurve::StretchCurve(Form form, std::vector<StretchPoint> points)
    : form_(form), points_(std::move(points)) {
    Expects(!points_.empty() && rises(points_));
}

StretchCurve StretchCurve::line(StretchPoint point) {
    return {Form::line, {point}};
}

StretchCurve StretchCurve::power(StretchPoint first, StretchPoint second) {
    return {Form::power, {first, second}};
}

StretchCurve StretchCurve::through(std::vector<StretchPoint> points) {
    Expects(points.size() >= 3);
    return {Form::through, std::move(points)};
}

bool StretchCurve::reaches(double load) const {
    return form_ != Form::through || load <= points_.back().load;
}

bool StretchCurve::covers(double load) const {
    constexpr double beyond_points = 1.5;
    return reaches(load) && load <= beyond_points * points_.back().load;
}

double StretchCurve::at(double load) const {
    Expects(load >= 0.0 && reaches(load));
    const StretchPoint& first = points_.front();
    switch (form_) {
    case Form::line:
        break;
    case Form::power:
        return first.strain * std::pow(load / first.load, exponent(points_));
    case Form::through:
        return between(points_, load);
    }
    return first.strain * load / first.load;
}

std::optional<double> StretchCurve::load_at(double strain) const {
    Expects(strain >= 0.0);
    const StretchPoint& first = points_.front();
    switch (form_) {
    case Form::line:
        return first.load * strain / first.strain;
    case Form::power:
        return first.load * std::pow(strain / first.strain, 1.0 / exponent(points_));
    case Form::through:
        break;
    }
    if (strain > points_.back().strain) {
        return std::nullopt;
    }
    double low = 0.0;
    double high = points_.back().load;
    constexpr int halvings = 60; // down to the last digits of a double
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2.0;
        (between(points_, middle) < strain ? low : high) = middle;
    }
    return high;
}

} // namespace libsplice
