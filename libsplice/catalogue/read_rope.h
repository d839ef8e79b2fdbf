// One record of a rope.
#pragma once

#include "libsplice/catalogue/read_record.h"

#include <optional>

namespace libsplice {

/// Reads a record of `tables/ropes/*.toml`. Forces, masses and lengths stand in the printed unit.
/// All faults of the record are pushed; after any there is no rope.
[[nodiscard]] std::optional<Rope> read_rope(TableContext& context, const Node& table);

} // namespace libsplice
