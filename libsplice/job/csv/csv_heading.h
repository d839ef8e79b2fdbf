// The heading of a CSV job: what stands in which column.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/job/csv/csv_records.h"
#include "libsplice/job/vocabulary.h"
#include "libsplice/units/read.h"

#include <optional>
#include <span>
#include <string_view>
#include <variant>
#include <vector>

namespace libsplice {

/// A heading taken apart: `length [m]` is `length` and `m`.
struct HeadingText {
    std::string_view name;
    std::optional<std::string_view> unit = {};
};
[[nodiscard]] HeadingText split_unit(std::string_view heading);
/// The fault of a heading whose unit is none that we know; it has no place.
[[nodiscard]] Fault unknown_unit(const HeadingText& heading);

/// One column: a fixed one, a field of an end, or nothing where the heading is blank.
struct CsvColumn {
    std::variant<std::monostate, Column, EndFieldName> what;
    std::optional<LengthUnit> unit = {}; ///< as in `length [m]`
};

/// Reads the heading from the record that `records` stands at. Every fault is pushed to `faults`,
/// and the first is the result.
[[nodiscard]] Result<std::vector<CsvColumn>>
read_heading(const CsvRecords& records, std::span<const std::string_view> end_fields,
             FaultSink& faults);

} // namespace libsplice
