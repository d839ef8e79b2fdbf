// One record of a rule.
#pragma once

#include "libsplice/catalogue/reading/read_record.h"

#include <optional>
#include <vector>

namespace libsplice {

/// Reads a rule. The keys `constructions` and `fibres` hold words of the vocabulary; every key that
/// is not listed with Rule is a figure. All faults of the record are pushed; after any there is no
/// rule.
[[nodiscard]] std::optional<Rule> read_rule(TableContext& context, const Node& table);

/// A size of rope under `key`, as it is printed; nothing where the key is absent or after a fault.
[[nodiscard]] std::optional<PrintedSize> read_printed_size(TableContext& context, const Node& table,
                                                           std::string_view key);

} // namespace libsplice
