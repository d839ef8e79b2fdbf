// Rope drawn up round a rigid pin: against plain geometry, and knots from several starting shapes.
#include "libsplice/mechanics/knots/knot_determinant.h"
#include "libsplice/mechanics/knots/pin_shapes.h"
#include "libsplice/mechanics/knots/tighten_on_pin.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace libsplice::testing {
namespace {

constexpr double coarse = 0.2;
constexpr double pi = std::numbers::pi;

const PinShape& shape(std::string_view name) {
    const auto found = std::ranges::find(pin_shapes(), name, &PinShape::name);
    EXPECT_NE(found, pin_shapes().end()) << name;
    return *found;
}

TightPinKnot pulled(const std::vector<Point>& points, double pin, PinHold hold, double mesh) {
    auto knot = tighten_pin_knot({points, false}, pin, hold, mesh);
    EXPECT_TRUE(std::holds_alternative<TightPinKnot>(knot));
    return std::get<TightPinKnot>(std::move(knot));
}

double consumed(const std::vector<Point>& points, double pin, PinHold hold, double mesh) {
    return pulled(points, pin, hold, mesh).rope.consumed(hold).value_or(0.0);
}

/// Every point moved aside, each by another step, so that the drawing is a different one.
std::vector<Point> with_lumps(std::vector<Point> points) {
    for (std::size_t i = 1; i + 1 < points.size(); ++i) {
        const auto at = static_cast<double>(i);
        points[i] = points[i] + Point{0.2 * std::sin(1.7 * at), 0.0, 0.15 * std::sin(2.3 * at)};
    }
    return points;
}

/// All within one per cent of the least.
void expect_agreement(const std::vector<double>& found) {
    const auto [least, most] = std::ranges::minmax(found);
    EXPECT_LT(most, 1.01 * least);
}

// Round the far side of a pin and back: two straight ends, and half a circle of the centreline,
// whose radius is half the pin's diameter and half the rope's.
TEST(PinKnot, AUTurnHasTheLengthOfItsGeometry) {
    constexpr double end = 12.0;
    for (const double pin : {0.5, 1.0, 4.0, 10.0}) {
        const double radius = (pin + 1.0) / 2.0;
        const std::vector<Point> slack{{end, radius, 0.0},
                                       {0.0, 1.5 * radius, 1.0},
                                       {-2.0 * radius, 1.4 * radius, 2.0},
                                       {-2.2 * radius, -radius, -1.0},
                                       {0.0, -2.0 * radius, 0.0},
                                       {end, -radius, 0.0}};
        const auto rope = tighten_on_pin({slack, false}, pin, PinHold::hitch, 0.1);
        const double geometry = 2.0 * end + pi * radius;
        EXPECT_NEAR(length_of(rope.curve), geometry, 0.005 * geometry) << pin;
        EXPECT_NEAR(rope.in_hitch(), pi * radius, 0.005 * pi * radius) << pin;
        EXPECT_GE(length_of(rope.curve), geometry - 1e-3) << "it lies outside the pin: " << pin;
    }
}

// One full turn, its ends led on past each other a diameter apart: a helix of that pitch, which
// unrolls to a straight line.
TEST(PinKnot, AFullTurnLiesBetweenTheCircleAndTheHelix) {
    constexpr double end = 15.0;
    constexpr double pin = 4.0;
    constexpr double radius = 2.5;
    std::vector<Point> slack{{end, radius, 0.5}};
    for (int i = 0; i <= 24; ++i) {
        const double at = pi / 2.0 + 2.0 * pi * i / 24;
        slack.push_back({1.4 * radius * std::cos(at), 1.4 * radius * std::sin(at), 1.2 - 0.1 * i});
    }
    slack.push_back({-end, radius, -0.5});
    const auto rope = tighten_on_pin({slack, false}, pin, PinHold::hitch, 0.1);
    EXPECT_GT(rope.in_hitch(), 2.0 * pi * radius);
    EXPECT_NEAR(rope.in_hitch(), std::hypot(2.0 * pi * radius, 1.0), 0.005 * 2.0 * pi * radius);
}

// The standing part down to the crown is a figure-eight, determinant 5, and so is what comes back
// beside it.
TEST(PinKnot, TheLoopIsAFigureEightInDoubledRope) {
    const auto points = respaced({shape("figure-eight-loop").points(1.0), false}, 0.2).points;
    const auto crown = std::ranges::min_element(points, {}, &Point::x);
    EXPECT_EQ(knot_determinant({{points.begin(), crown + 1}, false}), 5);
    EXPECT_EQ(knot_determinant({{crown, points.end()}, false}), 5);
}

TEST(PinKnot, FigureEightLoopComesOutTheSameFromThreeDrawings) {
    std::vector<double> found;
    for (const Drawing drawing : {Drawing{}, Drawing{1.25, 1.4, 1.7}, Drawing{0.8, 1.0, 1.0}}) {
        const auto knot = pulled(doubled_figure_eight(1.0, drawing), 1.0, PinHold::loop, coarse);
        EXPECT_EQ(knot.determinant_before, 5);
        EXPECT_EQ(knot.determinant_after, 5);
        EXPECT_GT(knot.rope.clearance, 0.999);
        found.push_back(knot.rope.beyond_loop().value_or(0.0));
    }
    expect_agreement(found);
}

TEST(PinKnot, HitchesComeOutTheSameFromThreeDrawings) {
    for (const auto drawn : {clove_hitch_drawn, cow_hitch_drawn}) {
        std::vector<double> found;
        for (const auto& points : {drawn(4.0, 1.0), drawn(4.0, 1.4), with_lumps(drawn(4.0, 1.2))}) {
            const auto knot = pulled(points, 4.0, PinHold::hitch, coarse);
            EXPECT_EQ(knot.determinant_before, knot.determinant_after);
            EXPECT_GT(knot.rope.clearance, 0.999);
            found.push_back(knot.rope.in_hitch());
        }
        expect_agreement(found);
    }
}

TEST(PinKnot, MirrorImagesAgreeAndRunsDoToTheLastDigit) {
    for (const PinShape& each : pin_shapes()) {
        const auto points = each.points(each.usual_pin);
        auto mirrored = points;
        for (Point& point : mirrored) {
            point.z = -point.z;
        }
        const double one = consumed(points, each.usual_pin, each.hold, coarsest_mesh);
        EXPECT_EQ(one, consumed(points, each.usual_pin, each.hold, coarsest_mesh)) << each.name;
        EXPECT_EQ(one, consumed(mirrored, each.usual_pin, each.hold, coarsest_mesh)) << each.name;
    }
}

TEST(PinKnot, FinerMeshIsNeverLonger) {
    for (const PinShape& each : pin_shapes()) {
        double before = 1e9;
        for (const double mesh : {0.4, 0.3, 0.2}) {
            const double now =
                consumed(each.points(each.usual_pin), each.usual_pin, each.hold, mesh);
            EXPECT_LT(now, before) << each.name << " at " << mesh;
            before = now;
        }
    }
}

// Two full turns take more rope than two circles, and less than two circles as wide as the rope
// that rides over.
TEST(PinKnot, CloveHitchIsTwoTurnsAndALittle) {
    for (const double spar : {1.0, 4.0, 10.0}) {
        const double found =
            consumed(shape("clove-hitch").points(spar), spar, PinHold::hitch, coarse);
        EXPECT_GT(found, rope_in_turns(spar, 2.0)) << spar;
        EXPECT_LT(found, rope_in_turns(spar + 2.0, 2.0)) << spar;
    }
    EXPECT_NEAR(rope_in_turns(4.0, 2.0), 31.4159265, 1e-6); // 5 pi twice
}

// A rope that only passes a pin makes no knot with it; one that is hitched to it does. So a pin
// that the rope was pulled through would be noticed.
TEST(PinKnot, DeterminantTellsTheTurnsRoundThePin) {
    const Curve past{{{9, 2, 0.5}, {0.1, 2.2, 0}, {-9, 2, -0.5}}, false};
    EXPECT_EQ(determinant_with_pin(past), 1);
    const auto clove = determinant_with_pin({clove_hitch_drawn(4.0, 1.4), false});
    ASSERT_TRUE(clove);
    EXPECT_GT(*clove, 1);
}

TEST(PinKnot, ALineWithoutAKnotHasNothingBeyondItsLoop) {
    const TightOnPin bight{
        {{{9, 1, 0}, {0, 1, 0}, {-1, 0, 0}, {0, -1, 0}, {9, -1, 0}}, false}, 1.0, 0.1, 1.0};
    EXPECT_FALSE(bight.beyond_loop());
}

TEST(PinKnot, StopsWhenTold) {
    int told = 0;
    const PinShape& clove = shape("clove-hitch");
    const auto early = tighten_on_pin({clove.points(4.0), false}, 4.0, clove.hold, coarse,
                                      [&](double, double length) {
                                          EXPECT_GT(length, 0.0);
                                          return ++told < 2;
                                      });
    EXPECT_EQ(told, 2);
    EXPECT_GT(early.in_hitch(), rope_in_turns(4.0, 2.0));
}

} // namespace
} // namespace libsplice::testing
