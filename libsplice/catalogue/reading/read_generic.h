// Records of what any rope of a sort holds at least.
#pragma once

#include "libsplice/catalogue/generic.h"
#include "libsplice/catalogue/reading/read_record.h"

#include <optional>

namespace libsplice {

/// Reads a record of `tables/generic.toml`: `id`, `construction`, `fibre`, `grade` (`lower`,
/// `higher`; none: nothing is said of it), the sizes read (`from`, `up_to`), and `breaking` in
/// `kN/mm2` and `mass` in `g/m/mm2` of the squared diameter. All faults are pushed; after any there
/// is none.
[[nodiscard]] std::optional<GenericRope> read_generic(TableContext& context, const Node& table);

} // namespace libsplice
