// The cells of a shelf row, and what they mean, whichever way they were written.
#pragma once

#include "libsplice/job/shelf.h"
#include "libsplice/units/read.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace libsplice {

/// A cell of a shelf: its text, its heading's unit and its place.
struct ShelfCell {
    std::string_view text;
    std::optional<LengthUnit> unit;
    Place place;
};
using ShelfCells = std::array<ShelfCell, shelf_column_count>;

/// The row that the cells say. Every fault is added with its place; with any, the row is of no use.
[[nodiscard]] ShelfRow read_shelf_row(const ShelfCells& cells, std::vector<Fault>& faults);

} // namespace libsplice
