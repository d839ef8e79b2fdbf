// splice show stretch: a rope under a load, and which size of another stretches no more.
#pragma once

#include "cli/declared/command.h"

namespace libsplice::cli {

/// Whether the words ask for it rather than for a line of a job called `stretch`.
[[nodiscard]] bool asks_for_stretch(const CommandLine& line);

/// `stretch ROPE load=PULL [length=LENGTH] [against=SORT]`.
Exit run_show_stretch(const CommandLine& line);

} // namespace libsplice::cli
