// Shared by the tests of ways: positions in millimetres, and the answer or the fault of a way.
#pragma once

#include "libsplice/mechanics/routes/polyline.h"
#include "libsplice/mechanics/routes/way.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <variant>
#include <vector>

namespace libsplice::testing {

inline Position at(double x, double y, double z = 0.0) {
    return {millimetres(x), millimetres(y), millimetres(z)};
}

/// Millimetres in the answer; NaN, and a failed test, for a fault.
inline double total_of(const OrWayFault<WayLength>& way) {
    const auto* length = std::get_if<WayLength>(&way);
    EXPECT_NE(length, nullptr);
    return length != nullptr ? length->total().si() * 1000.0 : std::nan("");
}
inline double total_of(const OrWayFault<Length>& way) {
    const auto* length = std::get_if<Length>(&way);
    EXPECT_NE(length, nullptr);
    return length != nullptr ? length->si() * 1000.0 : std::nan("");
}

/// Expects the fault `error` at `where`, with `needed` and `there` in millimetres.
template <class T>
void expect_fault(const OrWayFault<T>& way, WayError error, std::size_t where, double needed = 0.0,
                  double there = 0.0) {
    const auto* fault = std::get_if<WayFault>(&way);
    ASSERT_NE(fault, nullptr);
    EXPECT_EQ(fault->error, error);
    EXPECT_EQ(fault->at, where);
    EXPECT_NEAR(fault->needed.si() * 1000.0, needed, 1e-6);
    EXPECT_NEAR(fault->there.si() * 1000.0, there, 1e-6);
}

/// Numbers drawn one after another, the same on every machine and in every run.
class Draw {
  public:
    /// Between `at-least` and `most`.
    double operator()(double least, double most) {
        return least + (most - least) * static_cast<double>(numbers_()) / 4294967295.0;
    }

  private:
    std::mt19937 numbers_{20240229};
};

/// A zigzag-like row of `count` eyelets, unevenly spaced, about `across` from the x axis.
inline std::vector<Position> uneven_row(Draw& draw, std::size_t count, double across) {
    std::vector<Position> row;
    double along = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        along += draw(40.0, 60.0);
        row.push_back(at(along, across + draw(-10.0, 10.0)));
    }
    return row;
}

/// First of the one, first of the other, second of the one and so on.
inline std::vector<Position> in_turn(const std::vector<Position>& one,
                                     const std::vector<Position>& other) {
    std::vector<Position> both;
    for (std::size_t i = 0; i < one.size(); ++i) {
        both.push_back(one[i]);
        both.push_back(other[i]);
    }
    return both;
}

/// A turn of the whole boat about a slanting axis, by a quaternion, and a shift.
class Motion {
  public:
    explicit Motion(Draw& draw) {
        double norm = 0.0;
        for (double& part : turn_) {
            part = draw(-1.0, 1.0);
            norm += part * part;
        }
        for (double& part : turn_) {
            part /= std::sqrt(norm);
        }
        shift_ = at(draw(-900.0, 900.0), draw(-900.0, 900.0), draw(-900.0, 900.0));
    }

    Position operator()(const Position& old) const {
        const auto [w, x, y, z] = turn_;
        const auto [a, b, c] = old;
        return {shift_[0] + (1.0 - 2.0 * (y * y + z * z)) * a + 2.0 * (x * y - w * z) * b +
                    2.0 * (x * z + w * y) * c,
                shift_[1] + 2.0 * (x * y + w * z) * a + (1.0 - 2.0 * (x * x + z * z)) * b +
                    2.0 * (y * z - w * x) * c,
                shift_[2] + 2.0 * (x * z - w * y) * a + 2.0 * (y * z + w * x) * b +
                    (1.0 - 2.0 * (x * x + y * y)) * c};
    }
    std::vector<Position> operator()(const std::vector<Position>& old) const {
        std::vector<Position> moved;
        for (const Position& each : old) {
            moved.push_back((*this)(each));
        }
        return moved;
    }

  private:
    std::array<double, 4> turn_{};
    Position shift_;
};

} // namespace libsplice::testing
