// Which reel or offcut each piece comes from: what is asked, and the plan.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/base/stock_kind.h"
#include "libsplice/reel/solver/stock_problem.h"
#include "libsplice/units/quantity.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Money, in millionths of the shop's own.
using Money = std::int64_t;
inline constexpr Money money_unit = 1'000'000;

/// Pieces that are wanted: a line of a job.
struct Demand {
    std::string rope; ///< one name for one rope
    Nanometres length = 0;
    std::int64_t count = 1;
    std::string name;
    std::string boat = {};
    std::string lot = {};                ///< empty: any
    std::string colour = {};             ///< empty: any
    std::string pair = {};               ///< lines of one pair come from one lot; empty: no pair
    std::string title = {};              ///< the rope in words
    std::optional<Money> per_metre = {}; ///< what a metre of it costs, where the stock does not say
};

/// A row of the stock.
struct ReelStock {
    std::string id;
    std::string rope;
    std::optional<Nanometres> length;  ///< nothing: an order by the metre
    std::optional<std::int64_t> count; ///< nothing: as many as are wanted
    StockKind kind = StockKind::reel;
    Nanometres usable = 0;
    std::string lot = {};    ///< empty: not known
    std::string colour = {}; ///< empty: not known, and so of any
    std::string title = {};  ///< the rope in words
    Money per_metre = 0;
    std::optional<Money> per_reel = {}; ///< instead
    bool priced = true;                 ///< else a price is not known, and a metre counts as 1
    std::int64_t least_count = 1;
    Nanometres least_length = 0;

    [[nodiscard]] bool by_the_metre() const { return !length; }
};

/// What is made small; see `goals_of`.
enum class Objective : std::uint8_t { cost, waste, new_reels };
inline constexpr std::array<std::string_view, 3> objective_names{"cost", "waste", "new-reels"};
static_assert(objective_names.size() == static_cast<std::size_t>(Objective::new_reels) + 1);
[[nodiscard]] constexpr std::string_view name_of(Objective objective) {
    return objective_names.at(static_cast<std::size_t>(objective));
}

struct ReelQuestion {
    std::vector<Demand> demands;
    std::vector<ReelStock> stock;
    Nanometres cut_loss = 0;
    Objective objective = Objective::cost;
    double offcut_rate = 0.5; ///< what an offcut's metre counts for, against a new reel's
};

/// A piece in a cut.
struct PlacedPiece {
    std::size_t demand = 0;
    Nanometres at = 0; ///< where it starts, from the end that is cut from
};

enum class LeftIs : std::uint8_t { nothing, waste, offcut };

/// So many reels, offcuts or lengths that are cut alike, for the same lines.
struct ReelCut {
    std::size_t stock = 0;
    std::int64_t times = 1;
    Nanometres length = 0;
    Nanometres cut_loss = 0;
    Nanometres left = 0;
    LeftIs left_is = LeftIs::nothing;
    std::vector<PlacedPiece> pieces; ///< of each, in cutting order
};

/// What to order of one row: so many lengths of it, or one length by the metre.
struct OrderLine {
    std::size_t stock = 0;
    Nanometres length = 0;     ///< of each
    std::int64_t count = 0;    ///< 1 by the metre
    std::int64_t pieces = 0;   ///< that are cut from it
    Nanometres longest = 0;    ///< of these
    std::optional<Money> cost; ///< of all; nothing: a price is not known
};

struct Unplaced {
    std::size_t demand = 0;
    std::int64_t count = 0;
    Fault fault;
};

/// The ledger of rope: stock + ordered = pieces + cut_loss + offcuts + waste.
struct RopeLedger {
    std::string rope;
    std::string title;
    Nanometres stock = 0; ///< of reels and offcuts that are cut into
    Nanometres ordered = 0;
    Nanometres pieces = 0;
    Nanometres cut_loss = 0;
    Nanometres offcuts = 0;
    Nanometres waste = 0;
};

/// How good a plan is in the first thing that its objective makes small: money, nanometres or
/// reels.
struct Quality {
    Amount bound = 0; ///< no plan that places as much is under it
    Amount value = 0;

    /// How far the value may be from the best there is, as a share of the value.
    [[nodiscard]] double gap() const {
        return value <= bound ? 0.0
                              : static_cast<double>(value - bound) / static_cast<double>(value);
    }
    Quality& operator+=(const Quality& other) {
        bound += other.bound;
        value += other.value;
        return *this;
    }
};

struct ReelPlan {
    /// The question's rows, and behind them rope by the metre for what they lack.
    std::vector<ReelStock> stock;
    std::vector<ReelCut> cuts;
    std::vector<OrderLine> order;
    std::vector<Unplaced> unplaced;
    std::vector<RopeLedger> ledger; ///< by rope, in the order of the demands
    Quality quality;                ///< where cost is sought, of ropes whose prices are known
    /// Where cost is sought, of the other ropes, a metre being 1: never added to money.
    Quality unpriced;
    bool proved = true;
    Nanometres first_fit = 0;       ///< rope that first-fit decreasing would have cut into
    Nanometres cut_into = 0;        ///< rope that this plan cuts into
    Nanometres bought = 0;          ///< rope by the metre that the question's stock lacks
    Nanometres unplaced_length = 0; ///< of the pieces that have no place
};

/// Plans every rope, two at a time. What the stock cannot give is ordered by the metre; a piece
/// longer than any reel of its rope, or of a lot that is not there, has no place.
[[nodiscard]] ReelPlan plan_reels(const ReelQuestion& question, const SearchLimits& limits);

/// Code::rope_unbalanced where a cut or a rope's ledger does not add up, or a piece is not placed
/// as often as it is wanted.
[[nodiscard]] std::optional<Fault> check_balance(const ReelQuestion& question,
                                                 const ReelPlan& plan);

} // namespace libsplice
