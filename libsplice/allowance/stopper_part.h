// Stopper knots: the rope that lies beyond the knot's face.
#pragma once

#include "libsplice/allowance/kind.h"

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration set{
    "set",
    "rope in the knot as set by hand, as a multiple of the knot at its tightest",
    Dimension::ratio,
    0.7,
    2.0,
    "the table's figure for the construction"};
inline constexpr FieldDeclaration stub{
    "stub", "what is left sticking out beyond the knot", Dimension::length, 0.0,
    5.0,    "the table's multiple of D for the rope"};
} // namespace field

/// Which of a kind's fields describe a stopper.
struct StopperFields {
    std::size_t set;
    std::size_t stub;
};

/// All of a stopper but its steps. Beyond the face lie the rope that the knot uses up (its length
/// less the distance of its ends), the knot's own body, and the stub.
[[nodiscard]] Result<Allowance> stopper_knot(const Request& request, StopperFields fields);

} // namespace libsplice
