// What was chosen, line by line and for the whole job.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/choose/needs.h"
#include "libsplice/choose/verdict.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace libsplice {

/// What is asked for first among ropes that meet every need.
enum class Preference : std::uint8_t { cost, stretch, weight, hand };
inline constexpr std::array<std::string_view, 4> preference_words{"cost", "stretch", "weight",
                                                                  "hand"};
static_assert(preference_words.size() == static_cast<std::size_t>(Preference::hand) + 1);

/// Why a rope is shown for a line.
enum class ShownAs : std::uint8_t {
    named,        ///< the rope that the job names now
    size_down,    ///< of that
    size_up,      ///< of that
    polyester_up, ///< the next size up in polyester double braid, where that is high-modulus
    best,         ///< one of the best others
};
inline constexpr std::array<std::string_view, 5> shown_as_words{
    "named now", "a size down", "a size up", "polyester, a size up", "among the best"};
static_assert(shown_as_words.size() == static_cast<std::size_t>(ShownAs::best) + 1);

/// A rope that was tried on a line.
struct TriedRope {
    std::size_t candidate = 0;
    const Rope* rope = nullptr;
    ShownAs shown_as = ShownAs::best;
    Verdict verdict;
};

/// A line of a job with its ropes.
struct LineChoice {
    std::string name;
    std::string boat;
    std::int64_t quantity = 1;
    std::string rope;    ///< as the job names it; empty: it names none
    std::size_t row = 0; ///< of the job, from 0
    Needs needs;
    std::vector<TriedRope> ropes;
    std::optional<std::size_t> chosen; ///< of `ropes`; nothing: none meets every need
    std::optional<Fault> fault;        ///< its needs cannot be read
};

/// A choice for all lines at once.
struct Together {
    double cost = 0.0;         ///< in the shop's own money
    double bound = 0.0;        ///< no choice of these ropes can cost less
    double line_by_line = 0.0; ///< what the choice line by line costs, planned the same way
    std::size_t sorts = 0;     ///< of rope
    bool proved = false;
    std::vector<std::optional<std::size_t>> chosen; ///< by line: of its ropes

    [[nodiscard]] double gap() const { return cost > bound ? (cost - bound) / cost : 0.0; }
};

struct JobChoice {
    std::vector<LineChoice> lines;
    std::optional<Together> together; ///< where it was asked for
};

} // namespace libsplice
