// What a rope is called on a list of rope to buy.
#pragma once

#include "libsplice/catalogue/rope.h"

#include <string>
#include <string_view>

namespace libsplice {

/// One name for one rope, however its description is spaced: its id, or construction, fibre and
/// diameter.
[[nodiscard]] std::string one_name_of(const Rope& rope);

/// The rope in words, with its diameter and its colour; `colour` goes before the rope's own.
[[nodiscard]] std::string title_with_size(const Rope& rope, std::string_view colour);

} // namespace libsplice
