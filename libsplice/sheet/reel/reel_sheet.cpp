// The words that every sheet of a plan of reels shares.
#include "libsplice/sheet/reel/reel_sheet.h"

#include <array>

namespace libsplice {

std::string_view stock_kind_word(StockKind kind) {
    constexpr std::array<std::string_view, 3> words{"reel", "offcut", "order"};
    return words.at(static_cast<std::size_t>(kind));
}

std::string_view left_word(LeftIs left) {
    constexpr std::array<std::string_view, 3> words{"nothing", "waste", "offcut"};
    return words.at(static_cast<std::size_t>(left));
}

double gap_of(const ReelPlan& plan) {
    return plan.value <= plan.bound
               ? 0.0
               : static_cast<double>(plan.value - plan.bound) / static_cast<double>(plan.value);
}

double to_money(Money money) {
    return static_cast<double>(money) / static_cast<double>(money_unit);
}

} // namespace libsplice
