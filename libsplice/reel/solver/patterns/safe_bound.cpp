// Adds up dual prices in 128 bits, and takes off whatever a stock brings over its cost.
#include "libsplice/reel/solver/patterns/safe_bound.h"

#include <algorithm>

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wpedantic"
using Wide = __int128;
#pragma GCC diagnostic pop

namespace libsplice {

namespace {

Wide ceiling(Wide numerator, Wide denominator) {
    const Wide quotient = numerator / denominator;
    return quotient * denominator < numerator ? quotient + 1 : quotient;
}

/// All prices are multiplied by `numerator` / `denominator`.
struct Ratio {
    Wide numerator = 1;
    Wide denominator = 1;
};

Ratio scaled_down(std::span<const StockReach> stocks, Amount scale) {
    Ratio ratio;
    for (const StockReach& stock : stocks) {
        const Wide cost = Wide{stock.each} * scale;
        const bool beats = stock.scales && stock.available >= no_limit && stock.best > cost;
        if (beats && cost * ratio.denominator < ratio.numerator * stock.best) {
            ratio = {cost, stock.best};
        }
    }
    // Rounded down to a fraction that leaves room for the products below.
    constexpr Wide fine = Wide{1} << 40U;
    return {ratio.numerator * fine / ratio.denominator, fine};
}

} // namespace

Amount safe_bound(const ItemPrices& items, std::span<const StockReach> stocks, Amount step) {
    const Ratio ratio = scaled_down(stocks, items.scale);
    Wide sum = 0;
    for (std::size_t i = 0; i < items.prices.size(); ++i) {
        sum += Wide{items.prices[i]} * items.counts[i];
    }
    sum *= ratio.numerator;
    for (const StockReach& stock : stocks) {
        const Wide over =
            (stock.scales ? stock.best * ratio.numerator : stock.best * ratio.denominator) -
            Wide{stock.each} * items.scale * ratio.denominator;
        sum -= over * (over > 0 ? stock.available : stock.least);
    }
    const Wide bound = ceiling(sum, Wide{items.scale} * ratio.denominator);
    return static_cast<Amount>(std::max<Wide>(0, ceiling(bound, step) * step));
}

} // namespace libsplice
