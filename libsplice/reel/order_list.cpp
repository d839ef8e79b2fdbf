// Adds up the cuts of each row that is ordered: reels, metres, pieces and money.
#include "libsplice/reel/order_list.h"

#include "libsplice/reel/rope_problem.h"

#include <algorithm>
#include <cstdint>
#include <map>

namespace libsplice {

LeftIs left_is(const ReelStock& row, Nanometres left) {
    if (left == 0) {
        return LeftIs::nothing;
    }
    return left >= row.usable ? LeftIs::offcut : LeftIs::waste;
}

std::vector<ReelCut> minimum_orders(const ReelQuestion& question, std::span<const std::size_t> rows,
                                    std::span<const ReelCut> cuts) {
    std::vector<ReelCut> filling;
    for (const std::size_t row : rows) {
        const ReelStock& stock = question.stock[row];
        std::int64_t count = 0;
        Nanometres length = 0;
        for (const ReelCut& cut : cuts) {
            if (cut.stock == row) {
                count += cut.times;
                length += cut.length * cut.times;
            }
        }
        if (stock.kind != StockKind::order || count == 0) {
            continue;
        }
        const auto add = [&](Nanometres each, std::int64_t times) {
            filling.push_back({row, times, each, 0, each, left_is(stock, each), {}});
        };
        if (stock.length && count < stock.least_count) {
            add(*stock.length, stock.least_count - count);
        } else if (!stock.length && length < stock.least_length) {
            add(stock.least_length - length, 1);
        }
    }
    return filling;
}

std::vector<OrderLine> order_list(const ReelQuestion& question, std::span<const ReelCut> cuts) {
    std::map<std::size_t, OrderLine> lines;
    for (const ReelCut& cut : cuts) {
        const ReelStock& stock = question.stock[cut.stock];
        if (stock.kind != StockKind::order) {
            continue;
        }
        OrderLine& line = lines[cut.stock];
        line.stock = cut.stock;
        line.count = stock.by_the_metre() ? 1 : line.count + cut.times;
        line.length = stock.by_the_metre() ? line.length + cut.length * cut.times : cut.length;
        line.pieces += static_cast<std::int64_t>(cut.pieces.size()) * cut.times;
        for (const PlacedPiece& piece : cut.pieces) {
            line.longest = std::max(line.longest, question.demands[piece.demand].length);
        }
        if (stock.priced) {
            line.cost = line.cost.value_or(0) + money_of(stock, cut.length) * cut.times;
        }
    }
    std::vector<OrderLine> list(lines.size());
    std::ranges::transform(lines, list.begin(), [](const auto& entry) { return entry.second; });
    return list;
}

} // namespace libsplice
