// The knots round a rigid pin that can be tightened by name: loops that bear on it, and hitches.
#pragma once

#include "libsplice/mechanics/knots/curve.h"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

namespace libsplice {

/// How a knot holds its pin: by a loop of which the knot is clear, or drawn up round it.
enum class PinHold : std::uint8_t { loop, hitch };

/// A knot round a pin that lies along the z axis, and how it is laid out loose.
struct PinShape {
    std::string_view name;
    PinHold hold;
    double turns = 0.0;     ///< full turns of a hitch round its pin
    double usual_pin = 0.0; ///< the pin's diameter unless another is asked for
    /// An open line, to scale, round a pin of `pin` rope diameters. It begins with the standing
    /// part, which comes from +x; its ends lead away along x.
    std::vector<Point> (*points)(double pin);
};

[[nodiscard]] std::span<const PinShape> pin_shapes();

/// The thinnest and the thickest pin, in rope diameters.
inline constexpr double thinnest_pin = 0.5;
inline constexpr double thickest_pin = 20.0;

/// How far from the middle of a pin the middle of a rope on it runs; in rope diameters, as the pin.
[[nodiscard]] constexpr double centreline_radius(double pin) {
    return (pin + 1.0) / 2.0;
}

/// How large a knot is drawn.
struct Drawing {
    double wider = 1.0;  ///< 0.8 or more
    double longer = 1.0; ///< farther along the rope, besides that; 0.8 or more
    double higher = 1.0; ///< farther out of the plane of the drawing; 1 or more
};
/// A figure-eight followed back by its own end, so that a loop of doubled rope stands below it,
/// round the pin.
[[nodiscard]] std::vector<Point> doubled_figure_eight(double pin, Drawing drawing);

/// Two turns the same way round, the second under the rope that rides across from the first; the
/// tail leads on past the spar. `roomy` (1 or more) draws it so much more openly.
[[nodiscard]] std::vector<Point> clove_hitch_drawn(double spar, double roomy);

/// A turn each way round the spar from the bar that lies across both ends, which lead away
/// together.
[[nodiscard]] std::vector<Point> cow_hitch_drawn(double spar, double roomy);

} // namespace libsplice
