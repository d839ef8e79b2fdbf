// A lot cannot be bought, and a shop that has reels of a rope asks first about a piece that no reel
// could give; all else is a matter of more rope.
#include "libsplice/reel/shortfall.h"

#include "libsplice/units/show.h"

#include <algorithm>
#include <string>

namespace libsplice {

namespace {

std::string metres_of(Nanometres length) {
    std::string text;
    append_metres(text, length);
    return text + " m";
}

Fault refusal_of_lot(const ReelQuestion& question, const RopeShare& share, const RopeProblem& asked,
                     std::size_t item, const Demand& demand) {
    if (share.stock.empty()) {
        return {Code::rope_not_on_stock, "the stock has no rope \"" + demand.rope +
                                             "\", and so none of the lot \"" + demand.lot + '"'};
    }
    if (std::ranges::find(asked.items_without_lot, item) != asked.items_without_lot.end()) {
        return {Code::lot_cannot_hold,
                "no stock of this rope is of the lot \"" + demand.lot +
                    "\", and no one reel of an unknown lot can give all its pieces"};
    }
    const bool stated = std::ranges::any_of(
        share.stock, [&](std::size_t row) { return question.stock[row].lot == demand.lot; });
    return {stated ? Code::stock_runs_out : Code::lot_cannot_hold,
            "the stock of the lot \"" + demand.lot + "\" does not suffice for a piece of " +
                metres_of(demand.length) + "; free the line of its lot, or find more of it"};
}

/// The longest reel that could give the piece in its colour; nothing where no reel could.
std::optional<Nanometres> longest_reel(const ReelQuestion& question, const RopeShare& share,
                                       const Demand& demand) {
    std::optional<Nanometres> longest;
    for (const std::size_t row : share.stock) {
        const ReelStock& stock = question.stock[row];
        if (stock.kind != StockKind::offcut && suits(stock, demand, false)) {
            longest = std::max(longest.value_or(0), stock.length.value_or(demand.length));
        }
    }
    return longest;
}

} // namespace

std::optional<Fault> refusal_of(const ReelQuestion& question, const RopeShare& share,
                                const RopeProblem& asked, std::size_t item, std::size_t demand) {
    const Demand& wanted = question.demands[demand];
    if (!share.has_stock) {
        return std::nullopt;
    }
    if (!wanted.lot.empty()) {
        return refusal_of_lot(question, share, asked, item, wanted);
    }
    const auto longest = longest_reel(question, share, wanted);
    if (longest && *longest < wanted.length) {
        return Fault{Code::piece_longer_than_reels,
                     "a piece of " + metres_of(wanted.length) +
                         " is longer than any reel of this rope" +
                         (wanted.colour.empty() ? "" : " in " + wanted.colour) +
                         "; the longest is " + metres_of(*longest)};
    }
    return std::nullopt;
}

} // namespace libsplice
