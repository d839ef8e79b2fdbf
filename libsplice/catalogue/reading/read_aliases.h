// Records of what the trade calls things.
#pragma once

#include "libsplice/catalogue/reading/read_record.h"
#include "libsplice/catalogue/words/aliases.h"

#include <optional>

namespace libsplice {

/// Reads an `[[alias]]`: `of` (construction, fibre, rope, kind, field), the `name` here, and
/// `words` of the trade for it; of a kind also `constructions`. All faults are pushed; after any
/// there is none.
[[nodiscard]] std::optional<Alias> read_alias(TableContext& context, const Node& table);
/// Reads an `[[unclear]]`: `of`, `words`, what they could mean (`means`), and a `hint`.
[[nodiscard]] std::optional<UnclearWords> read_unclear(TableContext& context, const Node& table);

} // namespace libsplice
