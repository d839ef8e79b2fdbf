// One line of a job as it was read: cells as text, each with its place.
#pragma once

#include "libsplice/base/place.h"
#include "libsplice/units/read.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

class Node;

/// The fixed columns of a job file, in the order in which the documentation lists them.
enum class Column : std::uint8_t {
    name,
    boat,
    quantity,
    rope,
    length,
    route,
    tension,
    end_a,
    end_b,
    fit,
    tolerance,
    first_end,
    state,
    prestretched,
    carries_person,
    load,
    spare,
    extra,
    wear,
    pair,
    fit_first,
    lot,
    colour,
    note,
    strip,
    sleeve,
    headroom,
    travel,
    cleat,
    smallest_hole,
    reversible,
    wash,
    stretch,
};
inline constexpr std::size_t column_count = 33;

/// The two ends of a line.
enum class LineEnd : std::uint8_t { a, b };
[[nodiscard]] constexpr LineEnd other(LineEnd end) {
    return end == LineEnd::a ? LineEnd::b : LineEnd::a;
}

/// The column's name as it stands in a heading; the names in order of `Column`.
[[nodiscard]] std::string_view column_name(Column column);
[[nodiscard]] std::span<const std::string_view, column_count> column_names();
/// What a column means, in one line, for help and documentation.
[[nodiscard]] std::string_view column_meaning(Column column);

/// A cell: its text without blanks at either end, and the unit that its heading gives.
struct Cell {
    std::string_view text;               ///< empty: absent or blank
    std::optional<LengthUnit> unit = {}; ///< from a heading such as `length [m]`
    std::uint32_t index = 0;             ///< for JobLine::place()
};

/// A field of an end, e.g. `end_a.eye`.
struct EndFieldCell {
    LineEnd end;
    std::string_view field; ///< without the `end_a.`
    Cell cell;              ///< never blank
};

/// Finds the place of a cell when a fault needs it; places of good cells are never worked out.
class CellPlaces {
  public:
    CellPlaces() = default;
    CellPlaces(const CellPlaces&) = delete;
    CellPlaces& operator=(const CellPlaces&) = delete;
    virtual ~CellPlaces() = default;
    /// Place of cell `index` of the line being read: where it starts, its opening quote included. A
    /// cell that the line does not have stands at the line's end, a column that the file does not
    /// have at the line's start.
    [[nodiscard]] virtual Place place_of(std::uint32_t index) const = 0;
};

/// A line of a job. It borrows the reader's memory and lives until the reader goes on to the next.
class JobLine {
  public:
    /// The cell of a fixed column; its text is empty where the column is absent or the cell blank.
    [[nodiscard]] const Cell& cell(Column column) const {
        return cells[static_cast<std::size_t>(column)];
    }
    [[nodiscard]] std::string_view text(Column column) const { return cell(column).text; }
    [[nodiscard]] Place place(const Cell& cell) const { return places->place_of(cell.index); }

    std::array<Cell, column_count> cells{};
    std::span<const EndFieldCell> fields; ///< the end fields that are not blank, in file order
    /// The table of a TOML job's route; null where there is none. A route given as text stands in
    /// `Column::route` instead; either way place(cell(Column::route)) is the route's place.
    const Node* route = nullptr;
    /// Every cell that decides how the line is made, run together: equal plan keys mean equal rope,
    /// route, ends, fit and settings. It leaves out name, boat, quantity, length, note, pair, lot,
    /// colour, state and fit_first, which do not change an end. Empty in a line that is refused.
    std::string_view plan_key;
    const CellPlaces* places = nullptr; ///< never null in a line that a reader hands out
};

} // namespace libsplice
