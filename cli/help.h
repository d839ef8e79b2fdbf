// Help, made from the declarations of verbs and options.
#pragma once

#include "cli/verb.h"

#include <cstddef>
#include <string>

namespace libsplice::cli {

/// Characters to a line of help and of lists.
inline constexpr std::size_t help_width = 80;

[[nodiscard]] std::string help_for_all();
[[nodiscard]] std::string help_for(const Verb& verb);

} // namespace libsplice::cli
