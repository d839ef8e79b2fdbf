// How much rope a knot round a rigid pin uses at its tightest: a loop that bears on it, or a hitch.
#pragma once

#include "libsplice/mechanics/knots/pin_shapes.h"
#include "libsplice/mechanics/knots/tighten.h"

#include <optional>

namespace libsplice {

/// An ideal rope drawn up round a rigid pin that lies along the z axis, its ends held fast where
/// they lead away. Lengths in rope diameters.
struct TightOnPin {
    Curve curve;
    double clearance = 1.0; ///< closest approach of two strands, or of rope and pin; at most 1
    double mesh = 0.0;
    double pin = 0.0; ///< the pin's diameter

    /// Rope that a loop knot holds beyond the two legs of its loop, what a table calls
    /// `beyond_loop`. A rigger's line is: the finished length to the bearing point less the loop's
    /// length, the rope round the loop (`teardrop_eye`, legs touching at the throat), this, and the
    /// tail. The knot begins at its lower face, where the loop is measured to, and the tail at its
    /// upper face: half a diameter beyond the outermost of its bights, along the pull. Divided by
    /// the clearance, as of an open knot. Nothing where the curve has no knot with a loop below.
    [[nodiscard]] std::optional<double> beyond_loop() const;

    /// Rope in a hitch, from where the standing part comes level with the pin's axis to where the
    /// tail leaves that level: the whole line less the distance of both ends from the plane through
    /// the axis and across the pull. Likewise divided by the clearance.
    [[nodiscard]] double in_hitch() const;

    /// beyond_loop() or in_hitch(), whichever the knot is counted by.
    [[nodiscard]] std::optional<double> consumed(PinHold hold) const {
        return hold == PinHold::loop ? beyond_loop() : in_hitch();
    }
};

/// `turns` full turns of the centreline about a pin, in rope diameters.
[[nodiscard]] double rope_in_turns(double pin, double turns);

/// Draws up a loose rope, which nowhere lies within the pin, round a pin of diameter `pin`. Where
/// `hold` says that it is a loop knot, its tails and legs are cut short on the way.
/// Otherwise as tighten(); `telling` is told the whole length.
[[nodiscard]] TightOnPin tighten_on_pin(const Curve& loose, double pin, PinHold hold, double mesh,
                                        const Telling& telling = {}, double haste = 1.0);

/// The same, with the determinants before and after that show that the knot about its pin is still
/// the one it was: of a hitch determinant_with_pin(), of a loop that of the standing part down to
/// the loop's crown. Of a loop the line with its pin and the half from the crown to the tail are
/// compared as well.
struct TightPinKnot {
    TightOnPin rope;
    std::int64_t determinant_before = 0;
    std::int64_t determinant_after = 0;
};
[[nodiscard]] std::variant<TightPinKnot, TightError> tighten_pin_knot(const Curve& loose,
                                                                      double pin, PinHold hold,
                                                                      double mesh,
                                                                      const Telling& telling = {});

/// The determinant of the closed line that the rope makes with its pin: from the tail's end far
/// away to one end of the pin, along its axis, and from the other end far away to the standing
/// part. So it tells of strands that went through each other and of rope that went through the pin.
[[nodiscard]] std::optional<std::int64_t> determinant_with_pin(const Curve& rope);

} // namespace libsplice
