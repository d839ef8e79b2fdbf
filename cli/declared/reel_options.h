// The options of splice reel.
#pragma once

#include "libsplice/reel/plan.h"

#include "cli/declared/command_line.h"

#include <string>

namespace libsplice::cli {

struct ReelOptions {
    std::string stock; ///< empty: there is none, and everything is to be bought
    Nanometres cut_loss = 0;
    Objective objective = Objective::cost;
    double seconds = 10.0;
    bool commit = false;
};

/// Reads --stock, --cut-loss, --minimise, --seconds and --commit. The fault says what is wrong with
/// which.
[[nodiscard]] Result<ReelOptions> read_reel_options(const CommandLine& command);

/// `bound 120.5, best 121, gap 0.41 %, 3 s`.
[[nodiscard]] std::string progress_of(Objective objective, Amount bound, Amount value,
                                      double seconds);

} // namespace libsplice::cli
