// The words of a job file, which CSV headings and TOML keys share.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/job/line.h"

#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// The fixed column of that name, or nothing.
[[nodiscard]] std::optional<Column> find_column(std::string_view name);

/// The name of an end's field, taken apart: `end_a.eye` is end a and `eye`.
struct EndFieldName {
    LineEnd end;
    std::string_view field;
};
/// Takes apart a name that starts with `end_a.` or `end_b.`; nothing for any other.
[[nodiscard]] std::optional<EndFieldName> split_end_field(std::string_view name);

/// The field as `end_fields` holds it, or nothing: no kind of end knows it.
[[nodiscard]] std::optional<std::string_view>
find_field(std::string_view field, std::span<const std::string_view> end_fields);

/// Code::unknown_column for a fixed column, naming the nearest, or the nearest three where none is
/// near. `what` says what the name is: `column` or `key`.
[[nodiscard]] Fault unknown_column(std::string_view what, std::string_view name, Place at);
/// Likewise for a field of an end.
[[nodiscard]] Fault unknown_end_field(std::string_view what, EndFieldName name,
                                      std::span<const std::string_view> end_fields, Place at);

} // namespace libsplice
