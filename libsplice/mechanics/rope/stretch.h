// How much longer a rope is under load than without.
#pragma once

#include "libsplice/units/quantity.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace libsplice {

/// A printed point of a load-elongation curve, both over 0.
struct StretchPoint {
    double load = 0.0;   ///< a share of the breaking strength, or newtons
    double strain = 0.0; ///< elongation there, 0.025 for 2.5 %
};

/// Whether loads and elongations of the points, in their order, both rise from 0 on.
[[nodiscard]] bool rises(std::span<const StretchPoint> points);

/// Load against elongation between the reference tension and working loads, where the first stretch
/// of a new rope, which is kept apart, is done. Loads are in whatever the points were given in.
class StretchCurve {
  public:
    /// A straight line from no load through one point and on. Fair near that point.
    [[nodiscard]] static StretchCurve line(StretchPoint point);
    /// strain = A load^m through two points that rise, and on beyond them.
    [[nodiscard]] static StretchCurve power(StretchPoint first, StretchPoint second);
    /// A smooth curve from no load through three or more points that rise, which never falls
    /// between them; it stops at the last.
    [[nodiscard]] static StretchCurve through(std::vector<StretchPoint> points);

    /// Whether the curve says anything of this load, which is 0 or more.
    [[nodiscard]] bool reaches(double load) const;
    /// Whether the load lies within the points, or no more than half as much again beyond the last:
    /// farther out a curve that runs on is a guess.
    [[nodiscard]] bool covers(double load) const;
    /// Elongation at a load that the curve reaches.
    [[nodiscard]] double at(double load) const;
    /// The load of this elongation, 0 or more; nothing where the curve stops below it.
    [[nodiscard]] std::optional<double> load_at(double strain) const;
    /// The points that it was given, the last one last.
    [[nodiscard]] std::span<const StretchPoint> points() const { return points_; }

  private:
    enum class Form : std::uint8_t { line, power, through };
    StretchCurve(Form form, std::vector<StretchPoint> points);

    Form form_;
    std::vector<StretchPoint> points_;
};

/// The length at `to_strain` of a rope that is `length` long at `from_strain`.
[[nodiscard]] constexpr Length length_at(Length length, double from_strain, double to_strain) {
    return length * ((1.0 + to_strain) / (1.0 + from_strain));
}

/// The pull at which lengths of fibre rope are measured: D^2/8 kilogram-force with D in
/// millimetres. Never for shock cord or wire, which are measured without load.
[[nodiscard]] constexpr Force reference_tension(Length diameter) {
    const double millimetre_count = diameter.si() * 1000.0;
    return Force(millimetre_count * millimetre_count / 8.0 * newtons_per_kgf);
}

} // namespace libsplice
