// What was chosen, line by line and for a whole job.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/choose/needs.h"
#include "libsplice/choose/verdict.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// What is asked for first among ropes that meet every need.
enum class Preference : std::uint8_t { cost, stretch, weight, hand };
inline constexpr std::array<std::string_view, 4> preference_words{"cost", "stretch", "weight",
                                                                  "hand"};
static_assert(preference_words.size() == static_cast<std::size_t>(Preference::hand) + 1);

/// Why a rope is shown for a line.
enum class ShownAs : std::uint8_t {
    named,        ///< the rope that the job names now, with what it says of the reel
    size_down,    ///< of that
    size_up,      ///< of that
    polyester_up, ///< the next size up in polyester double braid, if that is high-modulus
    best,         ///< one of the best others
    together,     ///< chosen with the other lines of the job
    hybrid,       ///< of a line that is made otherwise, so never chosen
};
inline constexpr std::array<std::string_view, 7> shown_as_words{
    "named now",
    "a size down",
    "a size up",
    "polyester, a size up",
    "among the best",
    "with the other lines",
    "bare to the cleat, covered where it is held"};
static_assert(shown_as_words.size() == static_cast<std::size_t>(ShownAs::hybrid) + 1);

/// A rope that was tried on a line.
struct TriedRope {
    const Rope* rope = nullptr; ///< of the chooser or its candidates
    ShownAs shown_as = ShownAs::best;
    Verdict verdict;
    std::string made; ///< what the line says otherwise, for a hybrid
};

/// So many ropes fail a need by themselves, before the line is cut from them.
struct RopesOut {
    std::string need; ///< a column's name; `ends`: an end of the line is not made in such rope
    std::size_t ropes = 0;
};

/// A line of a job with its ropes.
struct LineChoice {
    std::string name;
    std::string boat;
    std::string colour;
    std::string lot;
    std::string pair;
    std::int64_t quantity = 1;
    std::string rope; ///< as the job names it; empty: it names none
    Needs needs;
    std::vector<TriedRope> ropes;
    std::optional<std::size_t> chosen; ///< of `ropes`; nothing: none meets every need
    std::vector<RopesOut> out;         ///< how many ropes were not tried, by what they fail
    /// Further ropes that meet every need, for a choice with the other lines.
    std::vector<TriedRope> others;
    std::optional<Fault> fault; ///< its needs cannot be read

    /// `ropes`, and behind them `others`.
    [[nodiscard]] std::size_t rope_count() const { return ropes.size() + others.size(); }
    [[nodiscard]] const TriedRope& rope_at(std::size_t index) const {
        return index < ropes.size() ? ropes[index] : others[index - ropes.size()];
    }
};

/// What a choice with fewer sorts of rope costs.
struct FewerSorts {
    std::size_t sorts = 0;
    double cost = 0.0;
    std::vector<std::string> ropes; ///< their titles
};

/// A choice for all lines at once, its costs in the shop's own money.
struct Together {
    double cost = 0.0;
    double bound = 0.0; ///< no choice of these ropes can cost less
    /// What the choice line by line costs, planned the same way; nothing if a piece has no place.
    std::optional<double> line_by_line;
    bool proved = false;
    std::size_t sorts = 0; ///< of rope
    std::size_t sorts_line_by_line = 0;
    std::vector<std::optional<std::size_t>> chosen; ///< by line: of its rope_at()
    std::vector<std::size_t> left_out;              ///< lines for which no rope with a price serves
    std::vector<FewerSorts> fewer;                  ///< the most sorts first

    [[nodiscard]] double gap() const { return cost > bound ? (cost - bound) / cost : 0.0; }
};

/// All lines of the jobs.
struct JobChoice {
    std::vector<LineChoice> lines;
    Preference preference = Preference::cost;
    bool asked_together = false;
    std::optional<Together> together; ///< nothing: not asked for, or no rope has a price
};

/// The lines with the ropes that were chosen for all of them, each shown among its ropes.
void take_together(JobChoice& choice);

} // namespace libsplice
