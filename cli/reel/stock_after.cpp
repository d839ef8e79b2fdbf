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

/// Names what has no name yet after the row that it comes from: `r1-1`, `r1-2`, and so on.
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

/// So many lengths that are left of one row, the longest first.
struct Left {
    Nanometres length;
    bool whole; ///< a reel that was ordered and not cut into
    friend bool operator<(const Left& a, const Left& b) {
        return std::tie(b.length, a.whole) < std::tie(a.length, b.whole);
    }
};

/// What is left of an order is a reel; by the metre it is a piece that came off one.
StockKind kind_left(const StockRow& row) {
    if (row.kind != StockKind::order) {
        return row.kind;
    }
    return row.length ? StockKind::reel : StockKind::offcut;
}

void set_count(StockRow& row, std::int64_t count) {
    row.count = count;
    text_of(row, StockColumn::count) = std::to_string(count);
}

/// The row as it is when only that length is left of each.
StockRow row_left(const StockRow& from, const Left& left, std::int64_t count) {
    StockRow row = from;
    row.kind = kind_left(from);
    row.length = left.length;
    set_count(row, count);
    std::string& length = text_of(row, StockColumn::length);
    length.clear();
    append_metres(length, left.length);
    length += " m";
    text_of(row, StockColumn::kind) = name_of(row.kind);
    text_of(row, StockColumn::least).clear();
    if (from.price && from.price->whole && !left.whole && from.length) {
        text_of(row, StockColumn::price) =
            show_number(from.price->value / from_nanometres(*from.length).si(), 4);
    }
    return row;
}

} // namespace

std::vector<StockRow> rows_after(std::span<const StockRow> rows, const ReelPlan& plan) {
    std::vector<std::int64_t> used(rows.size(), 0);
    std::vector<std::map<Left, std::int64_t>> left(rows.size());
    for (const ReelCut& cut : plan.cuts) {
        if (cut.stock >= rows.size()) {
            continue; // bought, because the stock lacks it
        }
        used[cut.stock] += cut.times;
        if (cut.left_is == LeftIs::offcut) {
            const bool whole = cut.pieces.empty() && rows[cut.stock].length.has_value();
            left[cut.stock][{cut.left, whole}] += cut.times;
        }
    }
    Names names(rows);
    std::vector<StockRow> after;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        // The id stays with what was not touched, else with the longest that is left.
        bool id_is_free = rows[i].kind != StockKind::order;
        const bool counted = rows[i].count && rows[i].length;
        if (!counted || used[i] == 0 || used[i] < *rows[i].count ||
            rows[i].kind == StockKind::order) {
            StockRow& row = after.emplace_back(rows[i]);
            if (counted && used[i] > 0) {
                set_count(row, *row.count - used[i]);
            }
            id_is_free = false;
        }
        for (const auto& [what, count] : left[i]) {
            StockRow& row = after.emplace_back(row_left(rows[i], what, count));
            if (!id_is_free) {
                row.id = names.next(rows[i].id);
                text_of(row, StockColumn::id) = row.id;
            }
            id_is_free = false;
        }
    }
    return after;
}

} // namespace libsplice::cli
