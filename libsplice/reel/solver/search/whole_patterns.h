// The best choice of whole patterns among those that are known.
#pragma once

#include "libsplice/reel/solver/search/dive.h"

#include <optional>

namespace libsplice {

/// A search in whole numbers over the patterns of the pool, for a plan that costs less than the
/// best; nothing where it finds none, or where there are so many items that it is not worth while.
[[nodiscard]] std::optional<StockPlan> whole_patterns(const DiveTools& tools);

} // namespace libsplice
