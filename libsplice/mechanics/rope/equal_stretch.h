// Which size of another rope stretches no more under the same load.
#pragma once

#include "libsplice/mechanics/rope/stretch.h"
#include "libsplice/units/quantity.h"

#include <optional>

namespace libsplice {

/// The pull that would double a rope's length if it went on as it starts, EA: load over elongation.
/// The ratio of two ropes' is how many times more the softer one stretches. `strain` over 0.
[[nodiscard]] Force stiffness(Force load, double strain);

/// The breaking strength that a rope needs so that `load` stretches it by `strain` and no more.
/// The curve's loads are shares of breaking strength; nothing where it stops below that elongation.
[[nodiscard]] std::optional<Force> strength_for_stretch(const StretchCurve& curve, Force load,
                                                        double strain);

/// The diameter at which a rope has the strength `needed`, where the same make in diameter `known`
/// has `strength`: strength goes with the section, the square of the diameter.
[[nodiscard]] Length size_for_strength(Length known, Force strength, Force needed);

} // namespace libsplice
