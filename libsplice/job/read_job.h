// Job files, CSV or TOML, as a stream of lines.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/base/input.h"
#include "libsplice/base/result.h"
#include "libsplice/job/line.h"

#include <functional>
#include <span>
#include <string_view>

namespace libsplice {

/// What a reader hands on: a line, or the fault that stands in its place (the line's cells, as far
/// as they could be read, stand in `line`).
struct JobRow {
    const JobLine& line;
    const Fault* fault = nullptr; ///< the first fault of a row that is refused; null for a good one
};
/// Takes a row; returns false to stop reading.
using OnRow = std::function<bool(const JobRow&)>;

/// Reads a CSV job. Rows come in the order of the file and memory does not grow with their number.
/// `end_fields` names every field that any kind of end has; it outlives the call. The result is
/// true at the end of the file, false where `on_row` stopped the reading.
///
/// Every fault is pushed to `faults` once. Faults of a row (Code::too_many_cells,
/// Code::cell_too_long, Code::not_utf8) leave the row refused, and reading goes on. Faults of the
/// file are pushed too, and the first of them is the result, so that a caller need only turn it
/// into an exit status: a file that cannot be read, quotes that do not pair, and whatever is wrong
/// with the heading, all of it in one run (none at all, an unknown or duplicate column, a unit
/// where none belongs, over 1,000 columns).
///
/// The reader sees to structure only: whether a cell holds a length, or anything, is for those who
/// use it.
[[nodiscard]] Result<bool> read_csv_job(Input& input, std::span<const std::string_view> end_fields,
                                        FaultSink& faults, const OnRow& on_row);

/// Reads a TOML job: `[defaults]`, `[[line]]` and `[[rope]]`, the vocabulary of the CSV columns. An
/// end is its kind's name, or a table of `kind` and fields; a line that gives an end replaces the
/// default end whole, and its own length or route replaces a default for either. As above, but the
/// whole file is in memory, and broken TOML, an unknown key or a value of the wrong shape anywhere
/// is a fault of the file: then no row is handed on.
[[nodiscard]] Result<bool> read_toml_job(Input& input, std::span<const std::string_view> end_fields,
                                         FaultSink& faults, const OnRow& on_row);

/// Reads one line from its table, which holds what a `[[line]]` may hold. Faults as above.
[[nodiscard]] Result<bool> read_toml_line(const Node& line,
                                          std::span<const std::string_view> end_fields,
                                          FaultSink& faults, const OnRow& on_row);

/// A cell of a line that does not come out of a file: a column's heading and the cell's text.
struct NamedCell {
    std::string_view heading; ///< as in a CSV job: `length`, `length [m]`, `end_a.eye`
    std::string_view text;
};
/// Reads one line from its cells. Nothing is handed on where all of them are blank. A heading that
/// is not known, or given twice, is a fault of the line as a heading is one of a file; a text that
/// no cell may hold refuses the line. Faults have no place.
[[nodiscard]] Result<bool> read_line_of_cells(std::span<const NamedCell> cells,
                                              std::span<const std::string_view> end_fields,
                                              FaultSink& faults, const OnRow& on_row);

/// Reads a job by its name: `.toml` is TOML, anything else CSV.
[[nodiscard]] Result<bool> read_job(Input& input, std::span<const std::string_view> end_fields,
                                    FaultSink& faults, const OnRow& on_row);

} // namespace libsplice
