// Reads the cells of a stock row and finds all that is wrong with them.
#include "libsplice/job/stock/stock_cells.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/units/read.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::int64_t most_reels = 1'000'000;
constexpr Nanometres longest_reel = 1'000'000 * nanometres_per_metre;

class RowReader {
  public:
    RowReader(const StockCells& cells, std::vector<Fault>& faults)
        : cells_(cells), faults_(faults) {}

    StockRow read() {
        StockRow row;
        row.place = cell(StockColumn::id).place;
        keep_texts(row);
        row.id = needed(StockColumn::id);
        row.rope = needed(StockColumn::rope);
        row.lot = cell(StockColumn::lot).text;
        row.colour = cell(StockColumn::colour).text;
        read_kind(row);
        const bool order = row.kind == StockKind::order;
        row.length = length(StockColumn::length, 1);
        if (!row.length && !order && cell(StockColumn::length).text.empty()) {
            add({Code::cell_missing,
                 "a reel or offcut needs its length; only an order may go without "
                 "one, and is then by the metre"},
                StockColumn::length);
        }
        row.count = count(StockColumn::count);
        if (!row.count && !order) {
            row.count = 1;
        }
        row.usable = length(StockColumn::usable, 0);
        read_price(row);
        read_least(row);
        return row;
    }

  private:
    [[nodiscard]] const StockCell& cell(StockColumn column) const {
        return cells_.at(static_cast<std::size_t>(column));
    }

    void add(Fault fault, StockColumn column) {
        fault.at = cell(column).place;
        fault.field = name_of(column);
        faults_.push_back(std::move(fault));
    }

    void keep_texts(StockRow& row) const {
        for (std::size_t i = 0; i < stock_column_count; ++i) {
            row.texts.at(i) = cells_.at(i).text;
            if (cells_.at(i).unit && read_number(cells_.at(i).text)) {
                row.texts.at(i) += ' ' + std::string(name_of(*cells_.at(i).unit));
            }
        }
    }

    std::string needed(StockColumn column) {
        std::string text(cell(column).text);
        if (text.empty()) {
            const std::string name(name_of(column));
            add({Code::cell_missing, "a row of the stock needs its " + name}, column);
        }
        return text;
    }

    void read_kind(StockRow& row) {
        const std::string text = needed(StockColumn::kind);
        const auto known = std::ranges::find(stock_kind_names, text);
        if (known != stock_kind_names.end()) {
            row.kind = static_cast<StockKind>(known - stock_kind_names.begin());
        } else if (!text.empty()) {
            const std::string near = did_you_mean(text, stock_kind_names);
            add({Code::not_a_choice, "kind is " + listed(stock_kind_names) +
                                         ", one of them, and not " + in_quotes(text) + near},
                StockColumn::kind);
        }
    }

    std::optional<Nanometres> length(StockColumn column, Nanometres lowest) {
        const StockCell& given = cell(column);
        if (given.text.empty()) {
            return std::nullopt;
        }
        auto read = read_length(given.text, given.unit);
        if (!read) {
            add(std::move(read).error(), column);
            return std::nullopt;
        }
        const bool in_range = read->length.si() <= from_nanometres(longest_reel).si() &&
                              to_nanometres(read->length) >= lowest;
        if (!in_range) {
            add({Code::value_out_of_range, std::string(name_of(column)) + " must be " +
                                               (lowest > 0 ? "over 0" : "0 or more") +
                                               " and up to 1,000,000 m"},
                column);
            return std::nullopt;
        }
        return to_nanometres(read->length);
    }

    std::optional<std::int64_t> count(StockColumn column) {
        if (cell(column).text.empty()) {
            return std::nullopt;
        }
        auto read = read_count(cell(column).text, 0, most_reels);
        if (!read) {
            add(std::move(read).error(), column);
            return std::nullopt;
        }
        return *read;
    }

    /// `2.40` or `2.40/m` a metre, `180/reel` a whole one.
    void read_price(StockRow& row) {
        const std::string_view text = cell(StockColumn::price).text;
        if (text.empty()) {
            return;
        }
        const std::size_t slash = text.find('/');
        const auto unit = slash == std::string_view::npos ? "m" : trimmed(text.substr(slash + 1));
        const auto value = read_number(trimmed(text.substr(0, slash)));
        constexpr double highest = 1e6;
        const bool whole = unit == "reel";
        if (!value || *value < 0.0 || *value > highest || (unit != "m" && !whole) ||
            (whole && !row.length)) {
            add({Code::not_a_number,
                 "a price is a number from 0 to 1,000,000, a metre's unless it ends in /reel "
                 "(2.40, 2.40/m, 180/reel); rope by the metre has no price of a reel"},
                StockColumn::price);
            return;
        }
        row.price = StockPrice{*value, whole};
    }

    /// The minimum of an order: reels where it has a length, else a length.
    void read_least(StockRow& row) {
        if (cell(StockColumn::least).text.empty()) {
            return;
        }
        if (row.kind != StockKind::order) {
            add({Code::not_a_choice, "only an order has a least"}, StockColumn::least);
        } else if (row.length) {
            row.least_count = count(StockColumn::least).value_or(1);
        } else {
            row.least_length = length(StockColumn::least, 0).value_or(0);
        }
    }

    const StockCells& cells_;
    std::vector<Fault>& faults_;
};

} // namespace

StockRow read_stock_row(const StockCells& cells, std::vector<Fault>& faults) {
    return RowReader(cells, faults).read();
}

} // namespace libsplice
