// Pulling a knot tight: a rope of fixed thickness grows shorter, and may not pass through itself.
#pragma once

#include "libsplice/mechanics/knots/near_strands.h"

#include <span>

namespace libsplice {

/// The rope is as thick as it will be from the start and its curve is shortened; a thin rope is
/// never blown up, which would change knots or catch. Shrink-on-no-overlaps after Pieranski (1998),
/// with momentum: each step pulls every point towards the middle of its neighbours, then moves
/// apart what has come closer than a diameter and opens what bends tighter than the rope can.
class Pull {
  public:
    /// `start` is spaced evenly; the ends of an open one stay where they are. `pin`, if it is not
    /// 0, is how near the centreline may come to the z axis: half the diameter of a rigid pin that
    /// lies along it, and half the rope's.
    explicit Pull(Curve start, double pin = 0.0);

    /// How hard the rope is pulled in a step, and how much of the step before it goes on with.
    struct Strength {
        double tension = 0.0;
        double momentum = 0.0;
    };
    void steps(std::size_t count, Strength strength);

    [[nodiscard]] const Curve& curve() const { return curve_; }
    /// Closest approach of two strands, at most 1: of stretches that lie pi/2 diameters or more
    /// from each other along the rope, so that no bend is taken for a touch.
    [[nodiscard]] double clearance() const;
    /// The same between rope and pin, as a share of what it should be; 1 without a pin.
    [[nodiscard]] double clearance_of_pin() const;

  private:
    [[nodiscard]] std::size_t segments_apart() const;
    void find_neighbours();
    void advance(Strength strength);
    void part_strands(bool backwards);
    void part(NearPair pair);
    void hold_off_pin(bool backwards);
    void hold_off_pin_at(std::size_t segment);
    void open_bends(bool backwards);
    void open_bend(std::size_t at);
    [[nodiscard]] bool may_move(std::size_t point) const {
        return curve_.closed || (point != 0 && point + 1 != curve_.points.size());
    }
    [[nodiscard]] std::size_t after(std::size_t point) const {
        return point + 1 == curve_.points.size() ? 0 : point + 1;
    }
    [[nodiscard]] std::size_t before(std::size_t point) const {
        return point == 0 ? curve_.points.size() - 1 : point - 1;
    }

    Curve curve_;
    double pin_ = 0.0;
    std::vector<Point> previous_;
    std::vector<Point> listed_at_; ///< where the points were when the neighbours were listed
    std::vector<NearPair> neighbours_;
    std::vector<NearPair> touching_;
    double deepest_bend_ = 0.0; ///< how far a point may lie off the middle of its neighbours
};

} // namespace libsplice
