// What an eye in wire says of the bend over its pin.
#pragma once

#include "libsplice/allowance/kind.h"

namespace libsplice {

/// The strength that rope keeps in a bend of `ratio` of its own diameters, by the printed ratios;
/// nothing where none is printed for it, or the bend is sharper than any that is.
[[nodiscard]] std::optional<Retained> retained_over(const Rules& rules, double ratio);

/// Adds the strength that the wire keeps where it bends round the pin, by the printed ratios, to an
/// eye whose facts have been added before. Nothing on a soft eye; a caution where the pin is
/// thinner than any that is printed.
void add_bend(End& allowance, const Request& request);

} // namespace libsplice
