// What is chosen as one: a line, or the lines of a pair, with the ropes that serve all of it.
#pragma once

#include "libsplice/choose/together/together.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace libsplice {

/// A rope that serves a unit.
struct UnitOption {
    std::size_t unit = 0;
    /// Its lines, each with its rope, by all_ropes().
    std::vector<std::pair<std::size_t, std::size_t>> members;
    std::vector<Demand> demands; ///< by member
};

struct TogetherUnits {
    std::size_t units = 0; ///< each has an option
    std::vector<UnitOption> options;
    std::vector<std::size_t> left_out; ///< lines for which no rope with a price serves
};

/// Every unit with its options, in the order of the lines.
[[nodiscard]] TogetherUnits units_of(const TogetherQuestion& question);

} // namespace libsplice
