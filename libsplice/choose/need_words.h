// The words in which a place says what it asks of its rope.
#pragma once

#include "libsplice/job/line.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace libsplice {

/// How long the load stands.
enum class Standing : std::uint8_t { seconds, race, season };
inline constexpr std::array<std::string_view, 3> standing_words{"seconds", "race", "season"};
static_assert(standing_words.size() == static_cast<std::size_t>(Standing::season) + 1);

/// What holds the line.
enum class Holder : std::uint8_t { cleat, clutch, lock, knot, winch, splice };
inline constexpr std::array<std::string_view, 6> holder_words{"cleat", "clutch", "lock",
                                                              "knot",  "winch",  "splice"};
static_assert(holder_words.size() == static_cast<std::size_t>(Holder::splice) + 1);

/// How much it is handled.
enum class Handling : std::uint8_t { none, now_and_then, all_day };
inline constexpr std::array<std::string_view, 3> handling_words{"none", "now-and-then", "all-day"};
static_assert(handling_words.size() == static_cast<std::size_t>(Handling::all_day) + 1);

/// How it runs.
enum class Running : std::uint8_t { stands, adjusted, runs, runs_hot };
inline constexpr std::array<std::string_view, 4> running_words{"stands", "adjusted", "runs",
                                                               "runs-hot"};
static_assert(running_words.size() == static_cast<std::size_t>(Running::runs_hot) + 1);

/// The columns of a job that say what a line asks of its rope, in the order in which they are
/// looked at.
inline constexpr std::array need_columns{
    Column::carries_person, Column::load,    Column::set_tension, Column::most_give,
    Column::standing,       Column::held_by, Column::held_range,  Column::sheave,
    Column::smallest_hole,  Column::hand,    Column::runs,        Column::floats,
    Column::price_limit,
};

/// The name of a need's column, by its place in `need_columns`.
[[nodiscard]] constexpr std::string_view name_of_need(std::size_t need) {
    return column_name(need_columns.at(need));
}

} // namespace libsplice
