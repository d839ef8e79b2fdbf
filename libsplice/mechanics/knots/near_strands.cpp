// Boost 1.74 includes a header that it calls deprecated itself.
#define BOOST_ALLOW_DEPRECATED_HEADERS

#include "libsplice/mechanics/knots/near_strands.h"

#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point.hpp>
#include <boost/geometry/index/rtree.hpp>

#include <algorithm>
#include <utility>

namespace libsplice {

namespace {

namespace bgi = boost::geometry::index;
using Corner = boost::geometry::model::point<double, 3, boost::geometry::cs::cartesian>;
using Box = boost::geometry::model::box<Corner>;
using Boxed = std::pair<Box, std::uint32_t>;

/// The box about a segment, `wider` on every side.
Box box_about(Point a, Point b, double wider) {
    return {
        Corner(std::min(a.x, b.x) - wider, std::min(a.y, b.y) - wider, std::min(a.z, b.z) - wider),
        Corner(std::max(a.x, b.x) + wider, std::max(a.y, b.y) + wider, std::max(a.z, b.z) + wider)};
}

} // namespace

std::vector<NearPair> near_pairs(const Curve& curve, double reach, std::size_t apart) {
    std::vector<Boxed> boxes;
    boxes.reserve(curve.segments());
    for (std::uint32_t i = 0; i < curve.segments(); ++i) {
        boxes.emplace_back(box_about(curve.begin_of(i), curve.end_of(i), 0.0), i);
    }
    const bgi::rtree<Boxed, bgi::quadratic<16>> tree(boxes);
    std::vector<NearPair> pairs;
    std::vector<Boxed> found;
    for (std::uint32_t i = 0; i < curve.segments(); ++i) {
        found.clear();
        tree.query(bgi::intersects(box_about(curve.begin_of(i), curve.end_of(i), reach)),
                   std::back_inserter(found));
        for (const auto& [box, j] : found) {
            const std::size_t along = j > i ? j - i : 0;
            const bool round = curve.closed && curve.segments() - along < apart;
            if (along >= std::max<std::size_t>(apart, 1) && !round) {
                pairs.push_back({i, j});
            }
        }
    }
    // The tree's order depends on how it was built.
    std::ranges::sort(pairs);
    return pairs;
}

} // namespace libsplice
