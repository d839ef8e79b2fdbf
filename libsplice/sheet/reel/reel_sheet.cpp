// The words that every sheet of a plan of reels shares.
#include "libsplice/sheet/reel/reel_sheet.h"

#include <algorithm>
#include <array>

namespace libsplice {

std::string_view left_word(LeftIs left) {
    constexpr std::array<std::string_view, 3> words{"nothing", "waste", "offcut"};
    return words.at(static_cast<std::size_t>(left));
}

bool has_value(const ReelPlan& plan, Objective objective) {
    return objective != Objective::cost || plan.quality.value > 0 || plan.unpriced.value == 0;
}

double gap_of(const ReelPlan& plan) {
    return std::max(plan.quality.gap(), plan.unpriced.gap());
}

double to_money(Money money) {
    return static_cast<double>(money) / static_cast<double>(money_unit);
}

} // namespace libsplice
