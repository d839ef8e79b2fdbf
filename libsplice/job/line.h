// One line of a job as it was read: cells as text, each with its place.
#pragma once

#include "libsplice/base/place.h"
#include "libsplice/job/columns.h"
#include "libsplice/units/unit.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

class Node;
struct GivenRoute;
struct RopeRow;

/// The two ends of a line.
enum class LineEnd : std::uint8_t { a, b };
[[nodiscard]] constexpr LineEnd other(LineEnd end) {
    return end == LineEnd::a ? LineEnd::b : LineEnd::a;
}

/// A cell: its text without blanks at either end, and the unit that its heading gives.
struct Cell {
    std::string_view text; ///< empty: absent or blank, or a table
    /// Of a length, from a heading such as `length [m]`. Where a heading gives the unit of
    /// something else, a bare number comes with that unit behind it: under `load [kN]` the cell `2`
    /// is `2 kN`.
    std::optional<LengthUnit> unit = {};
    std::uint32_t index = 0;    ///< for JobLine::place()
    const Node* node = nullptr; ///< the table, or the array of tables, of a TOML job
    /// Whether nothing stands here.
    [[nodiscard]] bool empty() const { return text.empty() && node == nullptr; }
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
    /// What `Column::route` gives; null where the line gives no route.
    const GivenRoute* route = nullptr;
    /// The rope of the same TOML job that `rope` names; null where it is none of them.
    const RopeRow* own_rope = nullptr;
    /// Every cell that decides how the line is made, run together: equal plan keys mean equal rope,
    /// route, ends, fit and settings. Which cells these are, the table of columns says. Empty in a
    /// line that is refused.
    std::string_view plan_key;
    const CellPlaces* places = nullptr; ///< never null in a line that a reader hands out
};

} // namespace libsplice
