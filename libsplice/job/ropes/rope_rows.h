// Ropes as a shop lists them: rows of texts, from a rope list or the [[rope]] tables of a job.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/base/fault_sink.h"
#include "libsplice/base/input.h"
#include "libsplice/job/cell_sort.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// The columns of a rope list.
enum class RopeColumn : std::uint8_t {
    id,
    title,
    construction,
    fibre,
    diameter,
    core_diameter,
    measured_diameter,
    breaking,
    stretch,
    mass,
    price,
    prestretched,
    colour,
    cover,
    lot,
    source,
    note,
};

/// The one table of these columns.
inline constexpr std::array rope_columns{
    FileColumn{"id", CellSort::text},
    FileColumn{"title", CellSort::text},
    FileColumn{"construction", CellSort::text},
    FileColumn{"fibre", CellSort::text},
    FileColumn{"diameter", CellSort::length},
    FileColumn{"core_diameter", CellSort::length},
    FileColumn{"measured_diameter", CellSort::length},
    FileColumn{"breaking", CellSort::force},
    FileColumn{"stretch", CellSort::measures},
    FileColumn{"mass", CellSort::mass},
    FileColumn{"price", CellSort::price},
    FileColumn{"prestretched", CellSort::yes_no},
    FileColumn{"colour", CellSort::text},
    FileColumn{"cover", CellSort::text},
    FileColumn{"lot", CellSort::text},
    FileColumn{"source", CellSort::text},
    FileColumn{"note", CellSort::text},
};
inline constexpr std::size_t rope_column_count = rope_columns.size();
static_assert(rope_column_count == static_cast<std::size_t>(RopeColumn::note) + 1);
[[nodiscard]] constexpr std::string_view name_of(RopeColumn column) {
    return rope_columns.at(static_cast<std::size_t>(column)).name;
}

/// A row of a rope list: its cells as text, each with its place.
struct RopeRow {
    struct Cell {
        std::string text; ///< empty: not given
        Place at;
    };
    std::array<Cell, rope_column_count> cells;
    [[nodiscard]] const Cell& cell(RopeColumn column) const {
        return cells.at(static_cast<std::size_t>(column));
    }
    [[nodiscard]] std::string_view text(RopeColumn column) const { return cell(column).text; }
};

/// Reads a rope list: TOML (`[[rope]]`) where the name ends in `.toml`, else CSV. Its needed
/// columns are id, construction, fibre and diameter (Code::no_heading, Code::cell_missing); an id
/// stands once (Code::duplicate_record). Every fault is pushed, and with any there is no list: the
/// first is the result. Whether a text is a construction or a force is for those who use it.
[[nodiscard]] Result<std::vector<RopeRow>> read_rope_list(Input& input, FaultSink& faults);

/// The rows of a document's `[[rope]]`, null if it has none. Every fault is pushed to `faults`.
[[nodiscard]] std::vector<RopeRow> read_rope_tables(const Node* ropes, FaultSink& faults);

} // namespace libsplice
