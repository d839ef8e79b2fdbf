// What was chosen for a line.
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
};
inline constexpr std::array<std::string_view, 5> shown_as_words{
    "named now", "a size down", "a size up", "polyester, a size up", "among the best"};
static_assert(shown_as_words.size() == static_cast<std::size_t>(ShownAs::best) + 1);

/// A rope that was tried on a line.
struct TriedRope {
    const Rope* rope = nullptr; ///< of the chooser or its candidates
    ShownAs shown_as = ShownAs::best;
    Verdict verdict;
};

/// A line of a job with its ropes.
struct LineChoice {
    std::string name;
    std::string boat;
    std::int64_t quantity = 1;
    std::string rope; ///< as the job names it; empty: it names none
    Needs needs;
    std::vector<TriedRope> ropes;
    std::optional<std::size_t> chosen; ///< of `ropes`; nothing: none meets every need
    std::optional<Fault> fault;        ///< its needs cannot be read
};

} // namespace libsplice
