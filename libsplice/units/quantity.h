// Quantities that cannot be mixed up. Inside the library every number is in SI units.
#pragma once

#include <cmath>
#include <compare>
#include <cstdint>
#include <numbers>

namespace libsplice {

/// A number with a dimension, held in the SI unit that the dimension names. The numbers are finite
/// wherever a reader let them in.
template <class Dimension>
class Quantity {
  public:
    constexpr Quantity() = default;
    explicit constexpr Quantity(double si) : si_(si) {}

    [[nodiscard]] constexpr double si() const { return si_; }

    constexpr Quantity& operator+=(Quantity other) {
        si_ += other.si_;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        si_ -= other.si_;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
    friend constexpr Quantity operator-(Quantity a) { return Quantity(-a.si_); }
    friend constexpr Quantity operator*(double factor, Quantity a) {
        return Quantity(factor * a.si_);
    }
    friend constexpr Quantity operator*(Quantity a, double factor) { return factor * a; }
    friend constexpr Quantity operator/(Quantity a, double divisor) {
        return Quantity(a.si_ / divisor);
    }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.si_ / b.si_; }
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the defaulted comparison for one
    friend constexpr auto operator<=>(Quantity, Quantity) = default;

  private:
    double si_ = 0.0;
};

using Length = Quantity<struct LengthDimension>;     ///< metres
using Force = Quantity<struct ForceDimension>;       ///< newtons
using Angle = Quantity<struct AngleDimension>;       ///< radians
using LineMass = Quantity<struct LineMassDimension>; ///< kilograms per metre

[[nodiscard]] constexpr Length metres(double value) {
    return Length(value);
}
[[nodiscard]] constexpr Length millimetres(double value) {
    return Length(value / 1000.0);
}
[[nodiscard]] constexpr Angle degrees(double value) {
    return Angle(value * std::numbers::pi / 180.0);
}
[[nodiscard]] constexpr Force newtons(double value) {
    return Force(value);
}

/// Standard gravity, exact: newtons in a kilogram-force (ISO 80000-4).
inline constexpr double newtons_per_kgf = 9.80665;
/// Exact: metres in an inch (international inch, 1959).
inline constexpr double metres_per_inch = 0.0254;
/// Exact: newtons in a pound-force (0.45359237 kg times standard gravity).
inline constexpr double newtons_per_lbf = 0.45359237 * newtons_per_kgf;

/// Whole nanometres: lengths are compared, added up and rounded as these, so that a ledger adds up
/// exactly on every machine.
using Nanometres = std::int64_t;

inline constexpr Nanometres nanometres_per_metre = 1'000'000'000;

/// The nearest whole nanometre. Lengths up to 9,000 km are exact enough; longer ones never get in.
[[nodiscard]] inline Nanometres to_nanometres(Length length) {
    return static_cast<Nanometres>(std::llround(length.si() * 1e9));
}
[[nodiscard]] constexpr Length from_nanometres(Nanometres count) {
    return Length(static_cast<double>(count) / 1e9);
}

} // namespace libsplice
