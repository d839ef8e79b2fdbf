// Which reel or offcut each piece comes from: what is asked, and the plan.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/reel/solver/stock_problem.h"
#include "libsplice/units/quantity.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Pieces that are wanted: a line of a job.
struct Demand {
    std::string rope; ///< one name for one rope
    Nanometres length = 0;
    std::int64_t count = 1;
    std::string name;
    std::string boat;
    std::string lot;    ///< empty: any
    std::string colour; ///< empty: any
    std::string pair;   ///< lines of one pair come from one lot; empty: no pair
};

/// Where stock is.
enum class StockKind : std::uint8_t { reel, offcut, order };

/// Money, in millionths of the shop's own.
using Money = std::int64_t;
inline constexpr Money money_unit = 1'000'000;

/// A row of the stock.
struct ReelStock {
    std::string id;
    std::string rope;
    std::optional<Nanometres> length;  ///< nothing: an order by the metre
    std::optional<std::int64_t> count; ///< nothing: as many as are wanted
    StockKind kind = StockKind::reel;
    Nanometres usable = 0;
    std::string lot;    ///< empty: not known
    std::string colour; ///< empty: not known, and so of any
    Money per_metre = 0;
    std::optional<Money> per_reel; ///< instead
    std::int64_t least_count = 1;
    Nanometres least_length = 0;
};

/// What is made small; see `goals_of`.
enum class Objective : std::uint8_t { cost, waste, new_reels };
[[nodiscard]] std::span<const std::string_view> objective_names();

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

struct OrderLine {
    std::size_t stock = 0;
    Nanometres length = 0; ///< of each
    std::int64_t count = 0;
    Money cost = 0;
};

struct Unplaced {
    std::size_t demand = 0;
    std::int64_t count = 0;
    Fault fault;
};

/// The ledger of rope: stock + ordered = pieces + cut_loss + offcuts + waste.
struct RopeLedger {
    std::string rope;
    Nanometres stock = 0; ///< of reels and offcuts that are cut into
    Nanometres ordered = 0;
    Nanometres pieces = 0;
    Nanometres cut_loss = 0;
    Nanometres offcuts = 0;
    Nanometres waste = 0;
};

struct ReelPlan {
    std::vector<ReelCut> cuts;
    std::vector<OrderLine> order;
    std::vector<Unplaced> unplaced;
    std::vector<RopeLedger> ledger; ///< by rope, in the order of the demands
    Amount bound =
        0; ///< in the first thing that the objective makes small: money, nanometres or reels
    Amount value = 0;
    bool proved = true;
    Nanometres first_fit = 0; ///< rope that first-fit decreasing would have cut into
    Nanometres cut_into = 0;  ///< rope that this plan cuts into
    Money cost = 0;
};

/// Plans every rope, two at a time.
[[nodiscard]] ReelPlan plan_reels(const ReelQuestion& question, const SearchLimits& limits);

/// Code::rope_unbalanced where a cut or a rope's ledger does not add up, or a piece is not placed
/// as often as it is wanted.
[[nodiscard]] std::optional<Fault> check_balance(const ReelQuestion& question,
                                                 const ReelPlan& plan);

} // namespace libsplice
