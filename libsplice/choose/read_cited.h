// Reads the records of places.toml.
#pragma once

#include "libsplice/catalogue/reading/read_record.h"
#include "libsplice/choose/cited_record.h"

#include <array>
#include <optional>
#include <string_view>

namespace libsplice {

/// The tables that places.toml may hold.
inline constexpr std::array<std::string_view, 7> cited_tables{"place",   "fibre",  "hand", "holder",
                                                              "running", "sheave", "usual"};

/// Reads a record of the table `sort`: `id`, `words`, and cells such as
/// `held_by = { is = "cleat", source = ..., locator = ..., status = ... }`. Every fault is pushed,
/// and with any there is no record.
[[nodiscard]] std::optional<CitedRecord> read_cited(TableContext& context, std::string_view sort,
                                                    const Node& table);

} // namespace libsplice
