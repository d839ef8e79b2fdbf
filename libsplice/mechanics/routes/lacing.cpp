// Adds up the legs of a lacing and its turns round eyelets, edges or rail.
#include "libsplice/mechanics/routes/lacing.h"

#include "libsplice/mechanics/rope/hitch.h"

#include <gsl/assert>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace libsplice {

namespace {

/// A product of sines; less is a turn whose hand rounding decides.
constexpr double as_good_as_straight = 1e-9;

Length diagonal(Length across, Length along) {
    return Length(std::hypot(across.si(), along.si()));
}

/// Nearer than the rope can pass.
bool too_near(Length apart, Length turned_on) {
    return apart + as_good_as_nothing < turned_on;
}

/// Between two pins `apart` (above 0) whose circles of the rope's centreline have the diameter
/// `turned_on`.
struct InnerTangent {
    Length leg;
    double lean; ///< radians from the line of centres

    InnerTangent(Length apart, Length turned_on) {
        const double sine = std::min(1.0, turned_on / apart);
        leg = apart * std::sqrt((1.0 - sine) * (1.0 + sine));
        lean = std::asin(sine);
    }
};

/// The pins of two rows in the order that a zigzag takes them.
std::vector<Position> taken_in_turn(std::span<const Position> first,
                                    std::span<const Position> second) {
    std::vector<Position> pins;
    pins.reserve(first.size() + second.size());
    for (std::size_t i = 0; i < first.size(); ++i) {
        pins.push_back(first[i]);
        if (i < second.size()) {
            pins.push_back(second[i]);
        }
    }
    return pins;
}

bool same_hand(const Deflection& one, const Deflection& other) {
    double along = 0.0;
    for (std::size_t i = 0; i < 3; ++i) {
        along += one.axis[i] * other.axis[i];
    }
    return along > as_good_as_straight;
}

/// The way over pins none of which lies where the one before it lies.
OrWayFault<WayLength> round_pins(std::span<const Position> pins, Length turned_on) {
    WayLength length;
    std::optional<Deflection> last;
    double last_lean = 0.0;
    for (std::size_t i = 1; i < pins.size(); ++i) {
        const Length apart = distance_between(pins[i - 1], pins[i]);
        if (too_near(apart, turned_on)) {
            return WayFault{WayError::cannot_pass, i, turned_on, apart};
        }
        const InnerTangent tangent(apart, turned_on);
        length.straight += tangent.leg;
        if (i >= 2) {
            const Deflection turn = deflection(pins[i - 2], pins[i - 1], pins[i]);
            if (last && same_hand(*last, turn)) {
                return WayFault{WayError::turns_one_way, i - 1};
            }
            length.wrapped += turned_on / 2.0 * (turn.angle.si() + last_lean + tangent.lean);
            ++length.turns;
            last = turn;
        }
        last_lean = tangent.lean;
    }
    return length;
}

/// Round the rail and back to the eyelet, seen along the rail: either leg touches the rail as if
/// the eyelet were the middle between it and another such rail.
Length loop_round(Length gap, Length turned_on) {
    const InnerTangent tangent(2.0 * gap, turned_on);
    return tangent.leg + turned_on / 2.0 * (std::numbers::pi + 2.0 * tangent.lean);
}

std::optional<WayFault> fault_of_rail(Length gap, Length turned_on) {
    Expects(gap.si() > 0.0);
    if (too_near(2.0 * gap, turned_on)) {
        return WayFault{WayError::rail_too_near, 0, turned_on / 2.0, gap};
    }
    return std::nullopt;
}

std::optional<WayFault> fault_of_pairs(std::span<const Position> first,
                                       std::span<const Position> second) {
    if (first.size() != second.size()) {
        return WayFault{WayError::rows_unlike, second.size()};
    }
    if (first.size() < 2) {
        return WayFault{WayError::too_few, first.size()};
    }
    return std::nullopt;
}

} // namespace

OrWayFault<WayLength> zigzag_lacing(std::size_t legs, Length gap, Length advance, Length edge,
                                    Length diameter) {
    Expects(gap.si() > 0.0);
    if (legs < 1) {
        return WayFault{WayError::too_few, legs};
    }
    const Length turned_on = edge + diameter;
    const Length apart = diagonal(gap, advance);
    if (too_near(apart, turned_on)) {
        return WayFault{WayError::cannot_pass, 1, turned_on, apart};
    }
    const InnerTangent tangent(apart, turned_on);
    const double slant = std::atan(advance / gap) - tangent.lean;
    const auto turns = static_cast<double>(legs - 1);
    return WayLength{tangent.leg * static_cast<double>(legs),
                     turned_on / 2.0 * (turns * (std::numbers::pi - 2.0 * slant)), legs - 1};
}

OrWayFault<WayLength> zigzag_lacing(std::span<const Position> first,
                                    std::span<const Position> second, Length edge,
                                    Length diameter) {
    if (first.size() != second.size() && first.size() != second.size() + 1) {
        return WayFault{WayError::rows_unlike, second.size()};
    }
    const auto pins = taken_in_turn(first, second);
    if (pins.size() < 2) {
        return WayFault{WayError::too_few, pins.size()};
    }
    for (std::size_t i = 1; i < pins.size(); ++i) {
        if (distance_between(pins[i - 1], pins[i]) < as_good_as_nothing) {
            return WayFault{WayError::same_place, i};
        }
    }
    return round_pins(pins, edge + diameter);
}

OrWayFault<Length> rail_lacing(std::size_t loops, Length gap, Length rail, Length pitch,
                               Length diameter) {
    if (loops < 1) {
        return WayFault{WayError::too_few, loops};
    }
    if (const auto fault = fault_of_rail(gap, rail + diameter)) {
        return *fault;
    }
    return static_cast<double>(loops) * diagonal(loop_round(gap, rail + diameter), pitch);
}

OrWayFault<Length> rail_lacing(std::span<const Position> eyelets, Length gap, Length rail,
                               Length diameter) {
    if (eyelets.size() < 2) {
        return WayFault{WayError::too_few, eyelets.size()};
    }
    if (const auto fault = fault_of_rail(gap, rail + diameter)) {
        return *fault;
    }
    const Length loop = loop_round(gap, rail + diameter);
    Length before = distance_between(eyelets[0], eyelets[1]);
    Length total;
    for (std::size_t i = 0; i < eyelets.size(); ++i) {
        const Length after =
            i + 1 < eyelets.size() ? distance_between(eyelets[i], eyelets[i + 1]) : before;
        total += diagonal(loop, (before + after) / 2.0);
        before = after;
    }
    return total;
}

OrWayFault<Length> criss_cross_lacing(std::size_t pairs, Length gap, Length pitch) {
    if (pairs < 2) {
        return WayFault{WayError::too_few, pairs};
    }
    return gap + 2.0 * static_cast<double>(pairs - 1) * diagonal(gap, pitch);
}

OrWayFault<Length> criss_cross_lacing(std::span<const Position> first,
                                      std::span<const Position> second) {
    if (const auto fault = fault_of_pairs(first, second)) {
        return *fault;
    }
    Length total = distance_between(first[0], second[0]);
    for (std::size_t i = 1; i < first.size(); ++i) {
        total += distance_between(first[i - 1], second[i]);
        total += distance_between(second[i - 1], first[i]);
    }
    return total;
}

OrWayFault<Length> straight_lacing(std::size_t pairs, Length gap, Length pitch) {
    if (pairs < 2) {
        return WayFault{WayError::too_few, pairs};
    }
    const auto n = static_cast<double>(pairs);
    return (n - 1.0) * gap + 2.0 * diagonal(gap, pitch) + (n - 2.0) * diagonal(gap, 2.0 * pitch);
}

OrWayFault<Length> straight_lacing(std::span<const Position> first,
                                   std::span<const Position> second) {
    if (const auto fault = fault_of_pairs(first, second)) {
        return *fault;
    }
    const std::size_t last = first.size() - 1;
    std::vector<Position> path{first[last]};
    const auto across = [&](std::size_t pair) {
        path.push_back(second[pair]);
        path.push_back(first[pair]);
    };
    for (std::size_t done = 1; done <= last; done += 2) {
        across(last - done);
    }
    for (std::size_t pair = last % 2; pair < last; pair += 2) {
        across(pair);
    }
    path.push_back(second[last]);
    return polyline_length(path);
}

Length spiral_lacing(double turns, Length around, Length pitch, Length diameter) {
    Expects(turns > 0.0);
    return turns * diagonal(round_turn(around, diameter), pitch);
}

} // namespace libsplice
