// What a TOML job may consist of.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/base/fault_sink.h"

#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

inline constexpr std::string_view toml_defaults_key = "defaults";
inline constexpr std::string_view toml_line_key = "line";
/// Ropes of the job's own; their keys are those of a rope list.
inline constexpr std::string_view toml_rope_key = "rope";
/// The key of an end's table that names its kind; the others are its fields.
inline constexpr std::string_view end_kind_key = "kind";

/// Checks that `document` has lines, that every key is known (Code::unknown_column) and that every
/// value has a shape that its column may have (Code::broken_toml): text, a number or true or false,
/// and what the table of columns allows besides. Code::no_heading where there is no `[[line]]`.
/// Every fault is pushed to `faults`, and the first is the result; nothing if all is well.
[[nodiscard]] std::optional<Fault> check_toml_job(const Node& document,
                                                  std::span<const std::string_view> end_fields,
                                                  FaultSink& faults);
/// The same of one line's table.
[[nodiscard]] std::optional<Fault>
check_toml_line(const Node& line, std::span<const std::string_view> end_fields, FaultSink& faults);

} // namespace libsplice
