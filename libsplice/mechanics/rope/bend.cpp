// Interpolates between the published ratios, and never beyond them.
#include "libsplice/mechanics/rope/bend.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

std::optional<double> retained_in_bend(std::span<const BendPoint> points, double ratio) {
    if (points.empty() || !(ratio >= points.front().ratio)) {
        return std::nullopt;
    }
    const auto above = std::ranges::upper_bound(points, ratio, {}, &BendPoint::ratio);
    if (above == points.end()) {
        return points.back().share;
    }
    const BendPoint& below = *(above - 1);
    const double part = std::log(ratio / below.ratio) / std::log(above->ratio / below.ratio);
    return below.share + (above->share - below.share) * part;
}

} // namespace libsplice
