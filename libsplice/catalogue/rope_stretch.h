// How a rope stretches, as a table gives it, with its spread and its source.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/catalogue/citation.h"
#include "libsplice/catalogue/figure.h"
#include "libsplice/mechanics/rope/stretch.h"
#include "libsplice/units/tension.h"

#include <optional>
#include <string>

namespace libsplice {

struct Rope;
class Rules;

/// A load-elongation curve of a rope. The whole curve errs together: where the rope stretches more
/// than it says at one load, it does so by the same share at every other.
struct RopeStretch {
    StretchCurve curve;
    bool by_force = false; ///< the curve's loads are newtons, not shares of breaking strength
    double spread = 0.0;   ///< standard deviation of an elongation, as a share of it
    SpreadOrigin origin = SpreadOrigin::none;
    CitationId source{};

    /// The load of the curve's last printed point, as it is printed: `30 %` or `60 N`.
    [[nodiscard]] std::string last_load() const;
};

/// The rope's own stretch, else that of its construction and fibre; nothing where no source gives
/// one. A stretch without a spread takes the one of the rules, a share that holds for any.
[[nodiscard]] std::optional<RopeStretch> stretch_of(const Rope& rope, const Rules& rules);

/// The pull in newtons; the rope's reference tension where none is given. Nothing for a share of a
/// breaking strength that is not known.
[[nodiscard]] std::optional<Force> pull_of(const Tension& tension, const Rope& rope);

/// The elongation of `rope` at a pull. Code::strength_missing, Code::beyond_stretch.
[[nodiscard]] Result<double> strain_at(const RopeStretch& stretch, const Tension& tension,
                                       const Rope& rope);

/// Whether the curve covers the pull: a longer reach is a guess. Nothing where the pull cannot be
/// counted in the curve's loads.
[[nodiscard]] std::optional<bool> is_covered(const RopeStretch& stretch, const Tension& tension,
                                             const Rope& rope);

} // namespace libsplice
