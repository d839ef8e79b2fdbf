// A pull on the rope, as a line states it.
#pragma once

#include <cstdint>

namespace libsplice {

/// A pull on the rope: a force, or a share of the rope's minimum breaking strength.
struct Tension {
    enum class Basis : std::uint8_t { reference, force, share };
    Basis basis = Basis::reference; ///< reference: the rope's reference tension (none was given)
    double value = 0.0;             ///< newtons for `force`, 0.3 for 30 % for `share`; else 0

    friend bool operator==(const Tension&, const Tension&) = default;
};

} // namespace libsplice
