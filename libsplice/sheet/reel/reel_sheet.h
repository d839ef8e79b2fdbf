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
    bool stopped = false; ///< before the search had ended
};

/// `offcut`, `waste` or `nothing`.
[[nodiscard]] std::string_view left_word(LeftIs left);
/// Whether the objective has a value: no money without the price of any rope.
[[nodiscard]] bool has_value(const ReelPlan& plan, Objective objective);
/// How far the value may be from the best there is, as a share of the value; the larger share where
/// some ropes have no price.
[[nodiscard]] double gap_of(const ReelPlan& plan);
[[nodiscard]] double to_money(Money money);

} // namespace libsplice
