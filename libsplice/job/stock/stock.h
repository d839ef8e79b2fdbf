// The stock as it was read: reels, offcuts, and what can be ordered.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/base/input.h"
#include "libsplice/base/result.h"
#include "libsplice/base/stock_kind.h"
#include "libsplice/job/cell_sort.h"
#include "libsplice/units/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// The columns of a stock file, in the order in which a stock is written.
enum class StockColumn : std::uint8_t {
    id,
    rope,
    length,
    count,
    kind,
    usable,
    lot,
    colour,
    price,
    least,
    note,
};

/// The one table of these columns.
inline constexpr std::array stock_columns{
    FileColumn{"id", CellSort::text},       FileColumn{"rope", CellSort::rope},
    FileColumn{"length", CellSort::length}, FileColumn{"count", CellSort::count},
    FileColumn{"kind", CellSort::choice},   FileColumn{"usable", CellSort::length},
    FileColumn{"lot", CellSort::text},      FileColumn{"colour", CellSort::text},
    FileColumn{"price", CellSort::price},   FileColumn{"least", CellSort::length},
    FileColumn{"note", CellSort::text}};
static_assert(stock_columns.size() == static_cast<std::size_t>(StockColumn::note) + 1);
inline constexpr std::size_t stock_column_count = stock_columns.size();
[[nodiscard]] constexpr std::string_view name_of(StockColumn column) {
    return stock_columns.at(static_cast<std::size_t>(column)).name;
}

/// A price in the shop's own money.
struct StockPrice {
    double value = 0.0;
    bool whole = false; ///< of a whole reel or offcut; else of one metre
};

/// A row of a stock.
struct StockRow {
    std::string id;
    std::string rope; ///< as the file names it
    /// Of each; nothing for an order that is sold by the metre.
    std::optional<Nanometres> length;
    std::optional<std::int64_t> count; ///< nothing for an order without a limit
    StockKind kind = StockKind::reel;
    std::optional<Nanometres> usable; ///< a remainder from this length on goes back to the stock
    std::string lot;
    std::string colour;
    std::optional<StockPrice> price;
    std::int64_t least_count = 1; ///< fewest reels of an order
    Nanometres least_length = 0;  ///< least length of an order by the metre
    Place place;
    /// Every cell as it was written; a length under a heading with a unit has the unit behind it.
    std::array<std::string, stock_column_count> texts;
};

/// Reads a stock: TOML (`[[stock]]`) where the name ends in `.toml`, else CSV. Every fault is
/// pushed, those of the file as those of a row, and with any there is no stock: a plan that leaves
/// stock out would be a guess. The result is the first fault. Code::duplicate_stock where an id
/// stands twice.
[[nodiscard]] Result<std::vector<StockRow>> read_stock(Input& input, FaultSink& faults);

/// The text of a stock in the same form, from the rows' texts.
[[nodiscard]] std::string write_stock(std::span<const StockRow> rows, bool toml);
/// Whether a file of that name is TOML.
[[nodiscard]] bool is_toml_stock(std::string_view name);

} // namespace libsplice
