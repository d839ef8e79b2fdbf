// What a stock holds after the cuts of a plan.
#include "libsplice/units/show.h"

#include "cli/reel/stock_file.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace libsplice::cli {

namespace {

std::string& text_of(StockRow& row, StockColumn column) {
    return row.texts.at(static_cast<std::size_t>(column));
}

/// Names what comes back after the row that it comes from: `r1-1`, `r1-2`, and so on.
class Names {
  public:
    explicit Names(std::span<const StockRow> rows) {
        for (const StockRow& row : rows) {
            used_.insert(row.id);
        }
    }
    std::string next(const std::string& id) {
        for (int number = 1;; ++number) {
            std::string name = id + '-' + std::to_string(number);
            if (used_.insert(name).second) {
                return name;
            }
        }
    }

  private:
    std::set<std::string> used_;
};

/// So many lengths that come back from one row.
struct Back {
    std::size_t row;
    Nanometres length;
    bool whole; ///< a reel that was ordered and not cut into
    friend bool operator<(const Back& a, const Back& b) {
        return std::tie(a.row, a.length, a.whole) < std::tie(b.row, b.length, b.whole);
    }
};

StockRow row_back(const StockRow& from, const Back& back, std::int64_t count, Names& names) {
    StockRow row = from;
    row.id = names.next(from.id);
    row.length = back.length;
    row.count = count;
    row.kind = back.whole ? ShelfKind::reel : ShelfKind::offcut;
    text_of(row, StockColumn::id) = row.id;
    std::string& length = text_of(row, StockColumn::length);
    length.clear();
    append_metres(length, back.length);
    length += " m";
    text_of(row, StockColumn::count) = std::to_string(count);
    text_of(row, StockColumn::kind) = shelf_kind_names()[static_cast<std::size_t>(row.kind)];
    text_of(row, StockColumn::least).clear();
    if (from.price && from.price->whole && !back.whole && from.length) {
        text_of(row, StockColumn::price) =
            show_number(from.price->value / from_nanometres(*from.length).si(), 4);
    }
    return row;
}

} // namespace

std::vector<StockRow> rows_after(std::span<const StockRow> rows, const ReelPlan& plan) {
    std::vector<std::int64_t> used(rows.size(), 0);
    std::map<Back, std::int64_t> backs;
    for (const ReelCut& cut : plan.cuts) {
        used[cut.stock] += cut.times;
        if (cut.left_is == LeftIs::offcut) {
            const bool whole = cut.pieces.empty() && rows[cut.stock].length.has_value();
            backs[{cut.stock, cut.left, whole}] += cut.times;
        }
    }
    std::vector<StockRow> after;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        StockRow row = rows[i];
        if (row.count && row.length && used[i] > 0) {
            *row.count -= used[i];
            text_of(row, StockColumn::count) = std::to_string(*row.count);
        }
        if (row.kind == ShelfKind::order || used[i] == 0 || *row.count > 0) {
            after.push_back(std::move(row));
        }
    }
    Names names(rows);
    for (const auto& [back, count] : backs) {
        after.push_back(row_back(rows[back.row], back, count, names));
    }
    return after;
}

} // namespace libsplice::cli
