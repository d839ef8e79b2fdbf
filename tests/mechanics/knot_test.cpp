// Tight knots against print, against each other, and from curves that were drawn for the test.
#include "libsplice/mechanics/knots/knot_determinant.h"
#include "libsplice/mechanics/knots/knot_shapes.h"
#include "libsplice/mechanics/knots/loose_knot.h"
#include "libsplice/mechanics/knots/tighten.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace libsplice::testing {
namespace {

constexpr double coarse = 0.2;

std::vector<Point> points_of(std::string_view name) {
    const auto shapes = knot_shapes();
    const auto shape = std::ranges::find(shapes, name, &KnotShape::name);
    EXPECT_NE(shape, shapes.end()) << name;
    return shape->points();
}

Curve loose(const std::vector<Point>& points) {
    auto rope = loose_rope(points);
    EXPECT_TRUE(std::holds_alternative<Curve>(rope));
    return std::get<Curve>(rope);
}

TightKnot pulled(const std::vector<Point>& points, double mesh) {
    auto knot = tighten_knot(loose(points), mesh);
    EXPECT_TRUE(std::holds_alternative<TightKnot>(knot));
    return std::get<TightKnot>(std::move(knot));
}

double consumed(std::string_view name, double mesh) {
    return pulled(points_of(name), mesh).rope.consumed();
}

// Pieranski, Przybyl, Stasiak, Eur. Phys. J. E 6:123 (2001): 10.1 and 13.7 diameters, recalled.
TEST(TightKnot, OverhandAndFigureEightAreThosePublished) {
    EXPECT_NEAR(consumed("overhand", 0.1), 10.1, 0.005 * 10.1);
    EXPECT_NEAR(consumed("figure-eight", 0.1), 13.7, 0.005 * 13.7);
}

// Denne, Diao, Sullivan, Geometry & Topology 10:1 (2006): a closed trefoil of 16.372 diameters.
TEST(TightKnot, ClosedTrefoilIsThatPublished) {
    std::vector<Point> ring;
    for (int i = 0; i < 90; ++i) {
        const double t = 2.0 * std::numbers::pi * i / 90;
        ring.push_back({std::sin(t) + 2.0 * std::sin(2.0 * t),
                        std::cos(t) - 2.0 * std::cos(2.0 * t), -std::sin(3.0 * t)});
    }
    const auto rope = loose_ring(ring);
    ASSERT_TRUE(std::holds_alternative<Curve>(rope));
    const auto knot = tighten_knot(std::get<Curve>(rope), 0.1);
    ASSERT_TRUE(std::holds_alternative<TightKnot>(knot));
    const TightKnot& tight = std::get<TightKnot>(knot);
    EXPECT_EQ(tight.determinant_after, 3);
    EXPECT_GE(tight.rope.ropelength(), 16.372); // polygons lie above
    EXPECT_NEAR(tight.rope.ropelength(), 16.372, 0.002 * 16.372);
}

// Determinants are in every table of knots: 3_1 3, 4_1 5, 5_1 5, 6_1 9, 7_1 7.
TEST(TightKnot, KeepsTheKnotsDeterminant) {
    for (const auto& [name, determinant] : {std::pair{"overhand", 3},
                                            {"figure-eight", 5},
                                            {"double-overhand", 5},
                                            {"stevedore", 9},
                                            {"triple-overhand", 7}}) {
        const Curve rope = loose(points_of(name));
        EXPECT_EQ(knot_determinant(rope), determinant) << name;
    }
    const TightKnot knot = pulled(points_of("triple-overhand"), 0.3);
    EXPECT_EQ(knot.determinant_before, 7);
    EXPECT_EQ(knot.determinant_after, 7);
}

TEST(TightKnot, FinerMeshIsNeverLonger) {
    double before = 1e9;
    for (const double mesh : {0.4, 0.3, 0.2, 0.1}) {
        const double now = consumed("overhand", mesh);
        EXPECT_LT(now, before) << mesh;
        before = now;
    }
}

TEST(TightKnot, MirrorImagesAgreeAndRunsDoToTheLastDigit) {
    const auto points = points_of("figure-eight");
    auto mirrored = points;
    for (Point& point : mirrored) {
        point.z = -point.z;
    }
    const TightKnot one = pulled(points, coarse);
    EXPECT_EQ(one.rope.consumed(), pulled(points, coarse).rope.consumed());
    EXPECT_EQ(one.rope.consumed(), pulled(mirrored, coarse).rope.consumed());
}

// A trefoil with lumps, its points few, unevenly spaced and turned: 10.1 all the same.
TEST(TightKnot, AnyOtherCurveOfTheKnotDoesAsWell) {
    for (const int count : {14, 300}) {
        std::vector<Point> line;
        for (int i = 0; i <= count; ++i) {
            const double u = (i + 0.3 * std::sin(7.0 * i)) / count;
            const double t = std::numbers::pi / 3.0 + 2.0 * std::numbers::pi * (0.03 + 0.94 * u);
            const double lump = 1.0 + 0.05 * std::sin(9.0 * t);
            const double x = lump * (std::sin(t) + 2.0 * std::sin(2.0 * t));
            const double y = lump * (std::cos(t) - 2.0 * std::cos(2.0 * t));
            line.push_back(
                {0.8 * x - 0.6 * std::sin(3.0 * t), y, 0.6 * x + 0.8 * std::sin(3.0 * t)});
        }
        line.insert(line.begin(), 3.0 * line.front());
        line.push_back(3.0 * line.back());
        const TightKnot knot = pulled(line, coarse);
        EXPECT_EQ(knot.determinant_before, 3);
        EXPECT_NEAR(knot.rope.consumed(), 10.1, 0.01 * 10.1) << count;
    }
}

TEST(TightKnot, StraightAndCoiledRopeUseNothing) {
    EXPECT_NEAR(pulled({{0, 0, 0}, {7, 0, 0}}, coarse).rope.consumed(), 0.0, 1e-12);
    std::vector<Point> coil{{-12, 2, 0}};
    for (int i = 0; i < 100; ++i) {
        const double t = 0.3 * i;
        coil.push_back({0.4 * t, 2.0 * std::cos(t), 2.0 * std::sin(t)});
    }
    coil.push_back({30, 0, 0});
    const TightKnot knot = pulled(coil, coarse);
    EXPECT_EQ(knot.determinant_before, 1);
    EXPECT_NEAR(knot.rope.consumed(), 0.0, 0.02);
}

TEST(TightKnot, StrandsThatMeetAreRefused) {
    const auto rope = loose_rope({{0, 0, 0}, {5, 0, 0}, {5, 5, 0}, {2, 5, 0}, {2, -5, 0}});
    ASSERT_TRUE(std::holds_alternative<LooseError>(rope));
    EXPECT_EQ(std::get<LooseError>(rope), LooseError::strands_meet);
    EXPECT_EQ(std::get<LooseError>(loose_rope({{1, 1, 1}, {1, 1, 1}})), LooseError::too_few);
}

// A line without a knot takes up no rope, however short or long it is drawn; one that is thinner
// than the arithmetic can hold is refused.
TEST(TightKnot, LinesWithoutAKnotTakeUpNothing) {
    const std::vector<std::vector<Point>> lines{{{0, 0, 0}, {0.1, 0, 0}},
                                                {{0, 0, 0}, {3000, 0, 0}},
                                                {{0, 0, 0}, {0.5, 0, 0}, {0.5, 0.5, 0}}};
    for (const auto& line : lines) {
        EXPECT_NEAR(pulled(line, coarse).rope.consumed(), 0.0, 0.02);
    }
    EXPECT_EQ(std::get<LooseError>(loose_rope({{0, 0, 0}, {1e-300, 0, 0}, {1e-300, 1e-300, 0}})),
              LooseError::too_short);
}

TEST(TightKnot, PointsWithoutNumberAreRefused) {
    std::vector<Point> line;
    for (std::size_t i = 0; i <= most_points; ++i) {
        line.push_back({0.1 * static_cast<double>(i), 0, 0});
    }
    EXPECT_EQ(std::get<LooseError>(loose_rope(line)), LooseError::too_many);
}

// A knot that is drawn a hundred times as large as its rope asks for takes up the same rope.
TEST(TightKnot, LargeDrawingsAreMadeSmaller) {
    auto large = points_of("overhand");
    for (Point& point : large) {
        point = 100.0 * point;
    }
    EXPECT_NEAR(pulled(large, coarse).rope.consumed(), consumed("overhand", coarse), 0.02);
}

// A shape that begins with the strands closer than a diameter is made larger, not thinner.
TEST(TightKnot, SmallDrawingsAreMadeLarger) {
    auto small = points_of("overhand");
    for (Point& point : small) {
        point = 0.01 * point;
    }
    EXPECT_NEAR(pulled(small, coarse).rope.consumed(), 10.1, 0.01 * 10.1);
}

TEST(TightKnot, TellsHowFarItIsAndStopsWhenTold) {
    int told = 0;
    const Curve rope = loose(points_of("overhand"));
    const TightRope early = tighten(rope, coarse, [&](double, double taken_up) {
        EXPECT_GT(taken_up, 0.0);
        return ++told < 3;
    });
    EXPECT_EQ(told, 3);
    EXPECT_GT(early.consumed(), 10.1);
}

} // namespace
} // namespace libsplice::testing
