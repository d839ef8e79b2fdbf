// Reads the table of a line's load.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/base/fault.h"
#include "libsplice/job/load/load.h"

#include <optional>
#include <vector>

namespace libsplice {

/// What the node's table says, or nothing: each of its faults has then been added, with its place.
/// Code::not_a_choice for a table that says none of these, or has an unknown key;
/// Code::cell_missing for a key that is missing; Code::not_a_length, not_a_number, not_a_tension
/// for a value.
[[nodiscard]] std::optional<LoadWords> read_load_words(const Node& node,
                                                       std::vector<Fault>& faults);

} // namespace libsplice
