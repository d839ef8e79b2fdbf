// How a shop cuts: the risk it accepts, the step it measures to, the pull it marks at.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/units/quantity.h"
#include "libsplice/units/read.h"

#include <optional>
#include <string_view>

namespace libsplice {

/// The pull on the rope while its marks are put on.
struct MarkingTension {
    enum class Basis : std::uint8_t { reference, load, slack };
    Basis basis = Basis::reference;
    Force load; ///< for Basis::load
};

/// Reads `reference`, `slack` or a force. Code::not_a_tension.
[[nodiscard]] Result<MarkingTension> read_marking_tension(std::string_view text);

/// Settings that hold for every line of a run.
struct CutSettings {
    double risk = 0.01;         ///< accepted chance that the rope is short, over 0 to 0.5
    std::optional<Length> step; ///< cut lengths are rounded up to it; none: 5 mm, for `exact` 1 mm
    MarkingTension marking_tension;
    /// Pieces without marks, steps and lengths at other pulls, for what prints none of them.
    bool lengths_only = false;
};

} // namespace libsplice
