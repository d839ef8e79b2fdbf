// One record of a rule.
#pragma once

#include "libsplice/catalogue/read_record.h"

#include <optional>
#include <vector>

namespace libsplice {

/// Reads the keys `constructions` and `fibres` hold words of the vocabulary; every key that is not
/// listed with Rule is a figure. All faults of the record are pushed; after any there is no rule.
[[nodiscard]] std::optional<Rule> read_rule(TableContext& context, const Node& table);

} // namespace libsplice
