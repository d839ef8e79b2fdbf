// One record of a rope.
#pragma once

#include "libsplice/catalogue/reading/read_record.h"
#include "libsplice/units/unit.h"

#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// Reads a record of `tables/ropes/*.toml`. Forces, masses and lengths stand in the printed unit.
/// All faults of the record are pushed; after any there is no rope.
[[nodiscard]] std::optional<Rope> read_rope(TableContext& context, const Node& table);

/// A value of a record in SI units, with its source; the first unit is the one that messages name.
/// Nothing where the key is absent, or after a fault.
[[nodiscard]] std::optional<Sourced<double>> read_rope_value(TableContext& context,
                                                             const Node& table,
                                                             std::string_view key,
                                                             std::span<const Unit> units);

} // namespace libsplice
