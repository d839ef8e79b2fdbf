// The stretch of a rope from its record.
#pragma once

#include "libsplice/catalogue/reading/read_record.h"
#include "libsplice/catalogue/rope_stretch.h"

#include <optional>

namespace libsplice {

/// Reads `{ value = 2.5, unit = "%", at = "20 %" }`, with a spread as any figure has one; or
/// `{ points = [...] }` of such figures, each with its `at`, which is a share of breaking strength
/// or a force, the same sort in all; two points with `form = "power"`, three or more without. The
/// curve's spread is the widest of its points'. Faults are pushed.
[[nodiscard]] std::optional<RopeStretch> read_stretch(TableContext& context, const Node& node,
                                                      std::optional<CitationId> inherited);

} // namespace libsplice
