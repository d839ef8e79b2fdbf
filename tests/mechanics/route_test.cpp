// A line from point to point round its sheaves, against arithmetic done by hand.
#include "libsplice/mechanics/routes/route.h"

#include "tests/mechanics/ways.h"

#include <algorithm>

namespace libsplice::testing {
namespace {

const Length rope = millimetres(10.0);

// 300 to the right, 400 up round a sheave of 40, 500 back to the left with 300 up round one of 30.
std::vector<WayPoint> two_sheaves() {
    return {{at(0, 0)},
            {at(300, 0), millimetres(40.0)},
            {at(300, 400), millimetres(30.0)},
            {at(-100, 700)}};
}

WayLength length_of(const std::vector<WayPoint>& way, Length diameter = rope) {
    const auto length = route_length(way, diameter);
    EXPECT_TRUE(std::holds_alternative<WayLength>(length));
    const auto* there = std::get_if<WayLength>(&length);
    return there != nullptr ? *there : WayLength{};
}

TEST(Route, PlainCornersAreTheStraightLegs) {
    const std::vector<WayPoint> way{{at(0, 0)}, {at(30, 40)}, {at(30, 40, 12)}, {at(30, 40)}};
    const auto length = length_of(way);
    EXPECT_NEAR(length.straight.si(), 0.074, 1e-15);
    EXPECT_EQ(length.wrapped.si(), 0.0);
    EXPECT_EQ(length.turns, 0U);
}

TEST(Route, RightAngleRoundASheave) {
    // R = (40 + 6)/2 = 23: 3000 + 4000 - 2 x 23 and 23 pi/2 = 36.12831552.
    const std::vector<WayPoint> way{{at(0, 0)}, {at(3000, 0), millimetres(40.0)}, {at(3000, 4000)}};
    const auto length = length_of(way, millimetres(6.0));
    EXPECT_NEAR(length.straight.si(), 6.954, 1e-13);
    EXPECT_NEAR(length.wrapped.si(), 0.03612831552, 5e-12);
    EXPECT_EQ(length.turns, 1U);
    EXPECT_NEAR(length.total().si(), 6.99012831552, 5e-12);
}

TEST(Route, EverySheaveTakesItsOwnBend) {
    // R = 25, a right angle: 25 off either leg, 25 x 1.570796327 = 39.26990817 on.
    // R = 20, phi = acos(3/5): tan(phi/2) = 1/2, 10 off either leg, 20 x 0.9272952180
    // = 18.54590436.
    const auto length = length_of(two_sheaves());
    EXPECT_NEAR(length.straight.si() * 1000.0, 1200.0 - 50.0 - 20.0, 1e-9);
    EXPECT_NEAR(length.wrapped.si() * 1000.0, 39.26990817 + 18.54590436, 1e-8);
    EXPECT_EQ(length.turns, 2U);
}

TEST(Route, SheaveThatTheLineOnlyTouchesTakesNothing) {
    const auto length = length_of({{at(0, 0)}, {at(100, 0), millimetres(40.0)}, {at(300, 0)}});
    EXPECT_NEAR(length.total().si(), 0.3, 1e-15);
}

TEST(Route, RopeAroundABareEdgeBendsByItsOwnThickness) {
    // No sheave is a plain corner, one of no diameter is an edge: R = 5, 10 less and 7.853981634
    // more.
    const auto edge = length_of({{at(0, 0)}, {at(100, 0), Length()}, {at(100, 100)}});
    EXPECT_NEAR(edge.total().si() * 1000.0, 197.853981634, 1e-8);
}

TEST(Route, StraightLacingIsARouteOfPlainPoints) {
    // Eight pairs, 80 across, 50 apart: out by every other pair, back by the rest.
    std::vector<WayPoint> way{{at(350, 0)}};
    for (const double pair : {6.0, 4.0, 2.0, 0.0, 1.0, 3.0, 5.0}) {
        way.push_back({at(50.0 * pair, 80)});
        way.push_back({at(50.0 * pair, 0)});
    }
    way.push_back({at(350, 80)});
    EXPECT_NEAR(length_of(way).total().si() * 1000.0, 1517.054531, 5e-7);
}

TEST(RouteFault, FewerThanTwoPoints) {
    expect_fault(route_length({}, rope), WayError::too_few, 0);
    expect_fault(route_length(std::vector<WayPoint>{{at(1, 1)}}, rope), WayError::too_few, 1);
}

TEST(RouteFault, TwoPointsInOnePlace) {
    const auto middle = millimetres(40.0);
    const std::vector<WayPoint> way{
        {at(0, 0)}, {at(300, 0), middle}, {at(300, 0), middle}, {at(300, 400)}};
    expect_fault(route_length(way, rope), WayError::same_place, 2);
    const std::vector<WayPoint> at_the_end{{at(0, 0)}, {at(300, 0), middle}, {at(300, 0)}};
    expect_fault(route_length(at_the_end, rope), WayError::same_place, 2);
}

TEST(RouteFault, SheaveWhereAnEndIsMade) {
    auto way = two_sheaves();
    way.back().sheave = millimetres(30.0);
    expect_fault(route_length(way, rope), WayError::sheave_at_end, 3);
    way.front().sheave = millimetres(30.0);
    expect_fault(route_length(way, rope), WayError::sheave_at_end, 0);
}

TEST(RouteFault, TurnRightBack) {
    const std::vector<WayPoint> way{{at(0, 0)}, {at(300, 0), millimetres(40.0)}, {at(100, 0)}};
    expect_fault(route_length(way, rope), WayError::turns_right_back, 1);
    // Not quite: R = 25, the tangents are hundreds of metres long.
    const std::vector<WayPoint> nearly{{at(0, 0)}, {at(300, 0), millimetres(40.0)}, {at(0, 0.03)}};
    const auto length = route_length(nearly, rope);
    ASSERT_TRUE(std::holds_alternative<WayFault>(length));
    EXPECT_EQ(std::get<WayFault>(length).error, WayError::bends_overlap);
}

TEST(RouteFault, BendsThatOverlapOnALeg) {
    // R = 25 twice, right angles: together 50 of the 49 between them.
    std::vector<WayPoint> way{
        {at(0, 0)}, {at(100, 0), millimetres(40.0)}, {at(100, 49), millimetres(40.0)}, {at(0, 49)}};
    expect_fault(route_length(way, rope), WayError::bends_overlap, 2, 50.0, 49.0);
    way[2].at = at(100, 50);
    way[3].at = at(0, 50);
    EXPECT_NEAR(length_of(way).total().si() * 1000.0, 150.0 + 78.53981634, 1e-8); // 75 + 0 + 75
}

TEST(RouteFault, BendThatRunsPastTheEndOfTheLine) {
    const auto sheave = millimetres(40.0);
    const std::vector<WayPoint> at_the_start{{at(76, 0)}, {at(100, 0), sheave}, {at(100, 90)}};
    expect_fault(route_length(at_the_start, rope), WayError::bends_overlap, 1, 25.0, 24.0);
    const std::vector<WayPoint> at_the_end{{at(0, 0)}, {at(100, 0), sheave}, {at(100, 24)}};
    expect_fault(route_length(at_the_end, rope), WayError::bends_overlap, 2, 25.0, 24.0);
}

/// A way of long legs that turns by less than a right angle or so at each of its points.
std::vector<WayPoint> wandering(Draw& draw) {
    std::vector<WayPoint> way{{at(0, 0)}};
    for (int i = 1; i < 9; ++i) {
        way.push_back({at(500.0 * i, draw(-300.0, 300.0), draw(-300.0, 300.0)),
                       millimetres(draw(10.0, 60.0))});
    }
    way.back().sheave.reset();
    return way;
}

TEST(RouteProperty, TheOtherWayRoundIsAsLong) {
    Draw draw;
    for (int round = 0; round < 200; ++round) {
        auto way = wandering(draw);
        const double forth = total_of(route_length(way, rope));
        std::ranges::reverse(way);
        EXPECT_NEAR(total_of(route_length(way, rope)), forth, 1e-9);
    }
}

TEST(RouteProperty, MovingTheBoatChangesNothing) {
    Draw draw;
    for (int round = 0; round < 200; ++round) {
        auto way = wandering(draw);
        const double still = total_of(route_length(way, rope));
        const Motion motion(draw);
        for (WayPoint& point : way) {
            point.at = motion(point.at);
        }
        EXPECT_NEAR(total_of(route_length(way, rope)), still, 1e-8);
    }
}

TEST(RouteProperty, BendsCutCornersButNotByMuch) {
    Draw draw;
    for (int round = 0; round < 200; ++round) {
        auto way = wandering(draw);
        std::vector<Position> corners;
        for (const WayPoint& point : way) {
            corners.push_back(point.at);
        }
        const double straight = polyline_length(corners).si() * 1000.0;
        const double bent = total_of(route_length(way, rope));
        EXPECT_LT(bent, straight);
        EXPECT_GT(bent, 0.98 * straight);
        // A thread round sheaves of no diameter goes by the corners.
        for (WayPoint& point : way) {
            if (point.sheave) {
                point.sheave = Length();
            }
        }
        EXPECT_NEAR(total_of(route_length(way, Length())), straight, 1e-9);
        EXPECT_NEAR(total_of(route_length(way, millimetres(1e-6))), straight, 1e-4);
    }
}

TEST(RouteProperty, ALittleChangeOfPlaceIsALittleChangeOfLength) {
    Draw draw;
    for (int round = 0; round < 200; ++round) {
        auto way = wandering(draw);
        const double before = total_of(route_length(way, rope));
        for (WayPoint& point : way) {
            point.at[1] += millimetres(draw(-1e-6, 1e-6));
        }
        // No point can change its two legs by more than twice its move.
        EXPECT_NEAR(total_of(route_length(way, rope)), before, 9 * 2e-6);
    }
}

} // namespace
} // namespace libsplice::testing
