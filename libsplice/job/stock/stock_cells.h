// The cells of a stock row, and what they mean, whichever way they were written.
#pragma once

#include "libsplice/job/stock/stock.h"
#include "libsplice/units/unit.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace libsplice {

/// A cell of a stock: its text, its heading's unit and its place.
struct StockCell {
    std::string_view text;
    std::optional<LengthUnit> unit;
    Place place;
};
using StockCells = std::array<StockCell, stock_column_count>;

/// The row that the cells say. Every fault is added with its place; with any, the row is of no use.
[[nodiscard]] StockRow read_stock_row(const StockCells& cells, std::vector<Fault>& faults);

} // namespace libsplice
