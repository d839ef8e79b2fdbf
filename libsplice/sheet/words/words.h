// The words of fits and ends, as the sheets print them.
#pragma once

#include "libsplice/cut/piece.h"

#include <string_view>

namespace libsplice {

[[nodiscard]] inline std::string_view name_of(Fit fit) {
    return fit_names()[static_cast<std::size_t>(fit)];
}
[[nodiscard]] constexpr std::string_view letter_of(LineEnd end) {
    return end == LineEnd::a ? "a" : "b";
}

} // namespace libsplice
