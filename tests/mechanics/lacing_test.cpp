// Lacings against figures worked out beforehand, over straight and over curved edges.
#include "libsplice/mechanics/routes/lacing.h"

#include "tests/mechanics/ways.h"

#include <algorithm>

namespace libsplice::testing {
namespace {

const Length none;

/// The pins of the one row and of the other of a straight zigzag.
struct Rows {
    std::vector<Position> first;
    std::vector<Position> second;
};

Rows straight_rows(std::size_t pins, double gap, double advance) {
    Rows rows;
    for (std::size_t i = 0; i < pins; ++i) {
        const double along = advance * static_cast<double>(i);
        (i % 2 == 0 ? rows.first : rows.second).push_back(at(along, i % 2 == 0 ? 0.0 : gap));
    }
    return rows;
}

// Not in step: a criss-cross of these is 40 + 2 x 50 + 2 sqrt(3200) = 253.1370850.
const std::vector lower{at(0, 0), at(30, 0), at(70, 0)};
const std::vector upper{at(0, 40), at(30, 40), at(70, 40)};

TEST(Zigzag, OfTheExample) {
    const auto lacing =
        zigzag_lacing(15, millimetres(80.0), millimetres(50.0), millimetres(8.0), millimetres(4.0));
    ASSERT_TRUE(std::holds_alternative<WayLength>(lacing));
    const auto& length = std::get<WayLength>(lacing);
    EXPECT_NEAR(length.total().si() * 1000.0, 1595.079212, 5e-7);
    EXPECT_NEAR(length.straight.si() * 1000.0, 15.0 * 93.57350052, 15.0 * 5e-9);
    // 14 x 6 (pi - 2 x 0.4310540374)
    EXPECT_NEAR(length.wrapped.si() * 1000.0, 191.4767046, 5e-7);
    EXPECT_EQ(length.turns, 14U);
}

TEST(Zigzag, OverRowsOfPinsIsTheSame) {
    const auto rows = straight_rows(16, 80, 50);
    const auto lacing = zigzag_lacing(rows.first, rows.second, millimetres(8.0), millimetres(4.0));
    EXPECT_NEAR(total_of(lacing), 1595.079212, 5e-7);
    EXPECT_EQ(std::get<WayLength>(lacing).turns, 14U);
    const auto even = straight_rows(15, 80, 50); // 14 legs: one pin more at the first edge
    EXPECT_NEAR(
        total_of(zigzag_lacing(even.first, even.second, millimetres(8.0), millimetres(4.0))),
        total_of(zigzag_lacing(14, millimetres(80.0), millimetres(50.0), millimetres(8.0),
                               millimetres(4.0))),
        1e-9);
}

TEST(Zigzag, RoundOnePinByHand) {
    // Two 3-4-5 legs of 50, R = 15: 40 of each is straight, and the arc is half a turn,
    // 2 atan(4/3) + 2 asin(3/5) = pi.
    const std::vector low{at(0, 0), at(60, 0)};
    const std::vector high{at(30, 40)};
    const auto lacing = zigzag_lacing(low, high, millimetres(26.0), millimetres(4.0));
    EXPECT_NEAR(total_of(lacing), 127.1238898, 5e-8);
    EXPECT_NEAR(std::get<WayLength>(lacing).straight.si(), 0.080, 1e-12);
}

TEST(Zigzag, OverUnevenRows) {
    // The common tangents found by halving their course, the arcs between them added: 373.7487950.
    const std::vector low{at(0, 0), at(45, -5), at(100, 3)};
    const std::vector high{at(10, 70), at(60, 80)};
    EXPECT_NEAR(total_of(zigzag_lacing(low, high, millimetres(8.0), millimetres(4.0))), 373.7487950,
                5e-7);
}

TEST(ZigzagFault, TooFew) {
    expect_fault(zigzag_lacing(0, millimetres(80.0), none, none, none), WayError::too_few, 0);
    expect_fault(zigzag_lacing({}, {}, none, none), WayError::too_few, 0);
    expect_fault(zigzag_lacing(std::vector{at(0, 0)}, {}, none, none), WayError::too_few, 1);
}

TEST(ZigzagFault, RopeThatCannotPassBetweenThePins) {
    // A leg of 50 between centres; pins and rope of 46 + 4 just pass, of 47 + 4 do not.
    const auto even = [](double edge) {
        return zigzag_lacing(3, millimetres(40.0), millimetres(30.0), millimetres(edge),
                             millimetres(4.0));
    };
    EXPECT_TRUE(std::holds_alternative<WayLength>(even(46.0)));
    expect_fault(even(47.0), WayError::cannot_pass, 1, 51.0, 50.0);
    const std::vector low{at(0, 0), at(90, 0)};
    const std::vector high{at(30, 40)};
    EXPECT_TRUE(std::holds_alternative<WayLength>(
        zigzag_lacing(low, high, millimetres(46.0), millimetres(4.0))));
    expect_fault(zigzag_lacing(low, high, millimetres(47.0), millimetres(4.0)),
                 WayError::cannot_pass, 1, 51.0, 50.0);
    const std::vector narrow_later{at(-60, 0), at(60, 0)};
    expect_fault(zigzag_lacing(narrow_later, high, millimetres(47.0), millimetres(4.0)),
                 WayError::cannot_pass, 2, 51.0, 50.0);
}

TEST(ZigzagFault, RowsThatDoNotSuit) {
    expect_fault(zigzag_lacing(lower, std::vector{at(0, 40)}, none, none), WayError::rows_unlike,
                 1);
    expect_fault(zigzag_lacing(std::vector{at(0, 40)}, lower, none, none), WayError::rows_unlike,
                 3);
}

TEST(ZigzagFault, PinsInOnePlace) {
    expect_fault(zigzag_lacing(lower, std::vector{at(0, 40), at(70, 0)}, none, none),
                 WayError::same_place, 4);
}

TEST(ZigzagFault, RowsThatRunInOppositeWays) {
    std::vector<Position> turned = upper;
    std::ranges::reverse(turned);
    expect_fault(zigzag_lacing(lower, turned, none, none), WayError::turns_one_way, 2);
}

TEST(Rail, OfTheExample) {
    EXPECT_NEAR(total_of(rail_lacing(20, millimetres(45.0), millimetres(32.0), millimetres(60.0),
                                     millimetres(4.0))),
                3302.708629, 5e-7);
    // One loop with no pitch is the loop in the plane.
    EXPECT_NEAR(
        total_of(rail_lacing(1, millimetres(45.0), millimetres(32.0), none, millimetres(4.0))),
        153.8496367, 5e-8);
}

TEST(Rail, AlongARowIsTheSame) {
    const auto eyelets = spaced_evenly(std::vector{at(0, 0), at(1140, 0)}, 20);
    EXPECT_NEAR(
        total_of(rail_lacing(eyelets, millimetres(45.0), millimetres(32.0), millimetres(4.0))),
        3302.708629, 5e-7);
}

TEST(Rail, TakesThePitchThatIsThere) {
    // 50 and 80 between three eyelets: loops with pitches of 50, 65 and 80 and 153.8496367 round.
    const std::vector eyelets{at(0, 0), at(30, 40), at(30, 120)};
    EXPECT_NEAR(
        total_of(rail_lacing(eyelets, millimetres(45.0), millimetres(32.0), millimetres(4.0))),
        502.1938482, 5e-7);
}

TEST(RailFault, EyeletNearerThanTheRope) {
    const auto even = [](double gap) {
        return rail_lacing(20, millimetres(gap), millimetres(32.0), millimetres(60.0),
                           millimetres(4.0));
    };
    EXPECT_TRUE(std::holds_alternative<Length>(even(18.0)));
    expect_fault(even(17.0), WayError::rail_too_near, 0, 18.0, 17.0);
    expect_fault(rail_lacing(lower, millimetres(17.0), millimetres(32.0), millimetres(4.0)),
                 WayError::rail_too_near, 0, 18.0, 17.0);
}

TEST(RailFault, TooFew) {
    expect_fault(rail_lacing(0, millimetres(45.0), none, none, none), WayError::too_few, 0);
    expect_fault(rail_lacing(std::vector{at(0, 0)}, millimetres(45.0), none, none),
                 WayError::too_few, 1);
}

TEST(CrissCross, OfTheExample) {
    EXPECT_NEAR(total_of(criss_cross_lacing(8, millimetres(80.0), millimetres(50.0))), 1400.757358,
                5e-7);
    const auto low = spaced_evenly(std::vector{at(0, 0), at(350, 0)}, 8);
    const auto high = spaced_evenly(std::vector{at(0, 80), at(350, 80)}, 8);
    EXPECT_NEAR(total_of(criss_cross_lacing(low, high)), 1400.757358, 5e-7);
}

TEST(CrissCross, OverUnevenRows) {
    EXPECT_NEAR(total_of(criss_cross_lacing(lower, upper)), 253.1370850, 5e-8);
}

TEST(StraightLacing, OfTheExample) {
    EXPECT_NEAR(total_of(straight_lacing(8, millimetres(80.0), millimetres(50.0))), 1517.054531,
                5e-7);
    for (const std::size_t pairs : {2U, 3U, 7U, 8U}) {
        const double end = 50.0 * static_cast<double>(pairs - 1);
        const auto low = spaced_evenly(std::vector{at(0, 0), at(end, 0)}, pairs);
        const auto high = spaced_evenly(std::vector{at(0, 80), at(end, 80)}, pairs);
        EXPECT_NEAR(total_of(straight_lacing(low, high)),
                    total_of(straight_lacing(pairs, millimetres(80.0), millimetres(50.0))), 1e-9);
    }
}

TEST(StraightLacing, OverUnevenRows) {
    // Across twice, 80; then 40 by 40, 30 by 40 and 70 by 40: 56.56854249 + 50 + 80.62257748.
    EXPECT_NEAR(total_of(straight_lacing(lower, upper)), 267.1911200, 5e-8);
}

TEST(PairsFault, TooFewOrUnlike) {
    const std::vector one{at(0, 0)};
    expect_fault(criss_cross_lacing(1, millimetres(80.0), none), WayError::too_few, 1);
    expect_fault(criss_cross_lacing(one, one), WayError::too_few, 1);
    expect_fault(criss_cross_lacing(lower, one), WayError::rows_unlike, 1);
    expect_fault(straight_lacing(1, millimetres(80.0), none), WayError::too_few, 1);
    expect_fault(straight_lacing(one, one), WayError::too_few, 1);
    expect_fault(straight_lacing(one, lower), WayError::rows_unlike, 3);
}

TEST(Spiral, OfTheExample) {
    EXPECT_NEAR(spiral_lacing(12.0, millimetres(60.0), millimetres(90.0), millimetres(5.0)).si() *
                    1000.0,
                2677.884859, 5e-7);
    // A part of a turn: 3/8 of pi 12 laid along 0.
    EXPECT_NEAR(spiral_lacing(0.375, millimetres(10.0), none, millimetres(2.0)).si() * 1000.0,
                14.13716694, 5e-8);
}

// ---- Properties ---------------------------------------------------------------------------------

TEST(LacingProperty, AThreadRoundPointsIsThePolyline) {
    Draw draw;
    const Length thread = millimetres(1e-7);
    for (int round = 0; round < 100; ++round) {
        const double gap = draw(20.0, 200.0);
        const double pitch = draw(5.0, 90.0);
        const auto rows = straight_rows(12, gap, pitch);
        const double legs = 11.0 * std::hypot(gap, pitch);
        for (const Length thin : {none, thread}) {
            EXPECT_NEAR(
                total_of(zigzag_lacing(11, millimetres(gap), millimetres(pitch), thin, thin)), legs,
                1e-5);
            EXPECT_NEAR(total_of(zigzag_lacing(rows.first, rows.second, thin, thin)), legs, 1e-5);
            // Out to the rail and back again, going along by one pitch.
            EXPECT_NEAR(total_of(rail_lacing(7, millimetres(gap), thin, millimetres(pitch), thin)),
                        7.0 * std::hypot(2.0 * gap, pitch), 1e-5);
            EXPECT_NEAR(spiral_lacing(7.0, thin, millimetres(pitch), thin).si() * 1000.0,
                        7.0 * pitch, 1e-5);
        }
    }
}

TEST(LacingProperty, UnevenRowsReduceToTheirPolyline) {
    Draw draw;
    for (int round = 0; round < 100; ++round) {
        const auto first = uneven_row(draw, 9, 0.0);
        const auto second = uneven_row(draw, 9, 300.0);
        const double centres = polyline_length(in_turn(first, second)).si() * 1000.0;
        EXPECT_NEAR(total_of(zigzag_lacing(first, second, none, none)), centres, 1e-9);
        EXPECT_NEAR(total_of(zigzag_lacing(first, second, millimetres(1e-7), none)), centres, 1e-5);
        EXPECT_GT(total_of(zigzag_lacing(first, second, millimetres(8.0), millimetres(4.0))),
                  centres);
    }
}

TEST(LacingProperty, MovingTheBoatOrReversingTheRowsChangesNothing) {
    Draw draw;
    const Length edge = millimetres(8.0);
    const Length rope = millimetres(4.0);
    for (int round = 0; round < 100; ++round) {
        const auto first = uneven_row(draw, 9, 0.0);
        const auto second = uneven_row(draw, 9, 300.0);
        const double zigzag = total_of(zigzag_lacing(first, second, edge, rope));
        const double rail = total_of(rail_lacing(first, millimetres(45.0), edge, rope));
        const double crossed = total_of(criss_cross_lacing(first, second));
        const double straight = total_of(straight_lacing(first, second));

        const Motion motion(draw);
        const auto moved_first = motion(first);
        const auto moved_second = motion(second);
        EXPECT_NEAR(total_of(zigzag_lacing(moved_first, moved_second, edge, rope)), zigzag, 1e-8);
        EXPECT_NEAR(total_of(rail_lacing(moved_first, millimetres(45.0), edge, rope)), rail, 1e-8);
        EXPECT_NEAR(total_of(criss_cross_lacing(moved_first, moved_second)), crossed, 1e-8);
        EXPECT_NEAR(total_of(straight_lacing(moved_first, moved_second)), straight, 1e-8);

        auto from_the_end = first;
        auto second_from_the_end = second;
        std::ranges::reverse(from_the_end);
        std::ranges::reverse(second_from_the_end);
        EXPECT_NEAR(total_of(zigzag_lacing(second_from_the_end, from_the_end, edge, rope)), zigzag,
                    1e-9);
        EXPECT_NEAR(total_of(rail_lacing(from_the_end, millimetres(45.0), edge, rope)), rail, 1e-9);
    }
}

TEST(LacingProperty, ALittleChangeIsALittleChangeOfLength) {
    Draw draw;
    for (int round = 0; round < 100; ++round) {
        const double gap = draw(40.0, 200.0);
        const double pitch = draw(5.0, 90.0);
        const auto zigzag = [&](double by) {
            return total_of(zigzag_lacing(11, millimetres(gap + by), millimetres(pitch),
                                          millimetres(8.0), millimetres(4.0 + by)));
        };
        const auto rail = [&](double by) {
            return total_of(rail_lacing(11, millimetres(gap + by), millimetres(30.0),
                                        millimetres(pitch), millimetres(4.0 + by)));
        };
        EXPECT_NEAR(zigzag(1e-6), zigzag(0.0), 11 * 5e-6);
        EXPECT_NEAR(rail(1e-6), rail(0.0), 11 * 5e-6);
    }
}

} // namespace
} // namespace libsplice::testing
