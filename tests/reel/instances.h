// Cutting-stock instances with a known optimum: those of OR-Library and those that the build makes.
#pragma once

#include "libsplice/reel/solver/stock_problem.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice::testing {

struct Instance {
    std::string name;
    StockProblem problem;
    std::optional<Amount> optimum; ///< nothing: it cannot be done
};

/// OR-Library's bin packing, uniform and triplets (tests/reel/instances/README.md).
[[nodiscard]] std::vector<Instance> or_library(const std::string& folder);
/// Those whose optimum is known from how they were made (tests/reel/planted.py).
[[nodiscard]] std::vector<Instance> planted(const std::string& folder);

} // namespace libsplice::testing
