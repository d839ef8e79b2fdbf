// Help, made from the declarations of verbs and options.
#pragma once

#include "cli/verb.h"

#include <string>

namespace libsplice::cli {

[[nodiscard]] std::string help_for_all();
[[nodiscard]] std::string help_for(const Verb& verb);

} // namespace libsplice::cli
