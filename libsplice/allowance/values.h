// The figures of an end under the names that JSON, the C library and the texts of steps use.
#pragma once

#include "libsplice/allowance/end.h"

#include <optional>

namespace libsplice {

/// The most figures that an end has.
inline constexpr std::size_t most_end_values = 64;

/// Every figure that the end knows, from its typed parts and its kind's own.
[[nodiscard]] ShortList<Value, most_end_values> values_of(const End& end);

/// The figure of that name, if the end has it.
[[nodiscard]] std::optional<double> find_value(const End& end, ValueName name);

} // namespace libsplice
