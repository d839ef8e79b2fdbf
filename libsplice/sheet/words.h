// The words of items, marks and ends, as the sheets print them.
#pragma once

#include "libsplice/cut/piece.h"

#include <string_view>

namespace libsplice {

[[nodiscard]] inline std::string_view name_of(Item item) {
    return item_names()[static_cast<std::size_t>(item)];
}
[[nodiscard]] inline std::string_view name_of(MarkName mark) {
    return mark_names()[static_cast<std::size_t>(mark)];
}
[[nodiscard]] inline std::string_view name_of(ValueName value) {
    return value_names()[static_cast<std::size_t>(value)];
}
[[nodiscard]] inline std::string_view name_of(Fit fit) {
    return fit_names()[static_cast<std::size_t>(fit)];
}
[[nodiscard]] constexpr std::string_view letter_of(End end) {
    return end == End::a ? "a" : "b";
}

} // namespace libsplice
