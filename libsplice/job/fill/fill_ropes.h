// A job's own text with the ropes of its lines filled in; remarks and order stay as they are.
#pragma once

#include "libsplice/base/result.h"

#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// Fills in a CSV job: `ropes` has the rope of each row that a reader hands on, in order; empty:
/// the row stays as it is, as does one that names its rope. A column is added if there is none.
[[nodiscard]] std::string fill_csv(std::string_view text, std::span<const std::string> ropes);

/// The same for a TOML job whose lines are written as [[line]]. Code::cannot_write if they are
/// not.
[[nodiscard]] Result<std::string> fill_toml(std::string_view text,
                                            std::span<const std::string> ropes);

} // namespace libsplice
