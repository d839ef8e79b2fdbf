// The headings of a job's columns: which column each names, and in which unit.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/base/result.h"
#include "libsplice/job/cell_sort.h"
#include "libsplice/job/vocabulary.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace libsplice {

/// A heading taken apart: `Length (m)` is `length` and `m`.
struct HeadingText {
    std::string name; ///< in small letters, with `_` between words, as the columns are called
    std::optional<std::string_view> unit = {}; ///< in square or round brackets
};
[[nodiscard]] HeadingText split_heading(std::string_view heading);
/// The fault of a heading over cells of `sort` whose unit is none that we know; it has no place.
[[nodiscard]] Fault unknown_unit(const HeadingText& heading, CellSort sort);

/// One column: a fixed one, a field of an end, or nothing where the heading is blank.
struct JobColumn {
    std::variant<std::monostate, Column, EndFieldName> what;
    HeadingUnit unit = {}; ///< as in `length [m]`
};
/// How the cells of a column are written.
[[nodiscard]] CellForm form_of(const JobColumn& column, bool comma_is_decimal);

/// A heading as it is written, with its place.
struct WrittenHeading {
    std::string_view text;
    Place at;
};

/// Reads the headings of a job. Every fault is pushed to `faults`, and the first is the result:
/// Code::no_heading where none of them is known (a title, or a row of values), unknown_column,
/// duplicate_column.
[[nodiscard]] Result<std::vector<JobColumn>>
read_headings(std::span<const WrittenHeading> headings,
              std::span<const std::string_view> end_fields, FaultSink& faults);

} // namespace libsplice
