// A plan of reels, for the bench and for whoever orders the rope.
#pragma once

#include "libsplice/reel/plan.h"
#include "libsplice/units/quantity.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// A line of a job that no piece was planned for.
struct RefusedLine {
    std::string name;
    std::string boat;
    Fault fault;
};

/// Question and plan, with what the job could not give.
struct ReelSheet {
    const ReelQuestion& question;
    const ReelPlan& plan;
    std::span<const RefusedLine> refused;
    std::string_view objective;
    bool stopped = false; ///< before the search had ended
    bool priced = true;   ///< a price is known for all rope; else a metre without one counts as 1
};

/// `reel`, `offcut` or `order`.
[[nodiscard]] std::string_view stock_kind_word(StockKind kind);
/// `offcut`, `waste` or `nothing`.
[[nodiscard]] std::string_view left_word(LeftIs left);
/// How far the value may be from the best there is, as a share of the value.
[[nodiscard]] double gap_of(const ReelPlan& plan);
[[nodiscard]] double to_money(Money money);

} // namespace libsplice
