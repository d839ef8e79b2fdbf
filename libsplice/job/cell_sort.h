// What a cell can hold: how it is brought into one form, and which units its heading may give.
#pragma once

#include "libsplice/units/unit.h"

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>

namespace libsplice {

/// What a cell holds. It decides which units a heading may give, whether capitals matter and
/// whether a comma can be a decimal one.
enum class CellSort : std::uint8_t {
    text,     ///< any words; never changed
    choice,   ///< one of a few words, in any case
    yes_no,   ///< yes or no, in any case; true and false are the same
    end,      ///< a kind of end in any case, or a table of a kind and its fields
    rope,     ///< a rope by its name or its description
    measures, ///< lengths or shares among words, such as `0.6 m at 8.2 m`
    route,    ///< a route in words or as a table
    count,    ///< a whole number
    length,   ///< a length; a heading may give its unit
    force,    ///< a force; a heading may give its unit
    mass,     ///< a mass for each metre; a heading may give its unit
    price,    ///< money, for each metre or a reel
};

/// A column of a file whose columns are all known beforehand.
struct FileColumn {
    std::string_view name;
    CellSort sort = CellSort::length;
};

/// Whether a comma between two digits of such a cell is a decimal one, in a file that is not
/// separated by commas.
[[nodiscard]] constexpr bool holds_numbers(CellSort sort) {
    return sort >= CellSort::rope;
}

/// The unit that a heading gives: of a length, or the words that go behind a bare number.
struct HeadingUnit {
    std::optional<LengthUnit> length = {};
    std::string_view words = {}; ///< of a force, mass or price; empty: none
};
/// The unit `text` of a heading over cells of `sort`, in any case; nothing where it is none that
/// belongs there.
[[nodiscard]] std::optional<HeadingUnit> read_heading_unit(std::string_view text, CellSort sort);
/// `mm, cm, m, in or ft`: the units that such a heading may give; empty where it takes none.
[[nodiscard]] std::string units_for(CellSort sort);

/// How the cells of a column are written.
struct CellForm {
    CellSort sort = CellSort::text;
    bool comma_is_decimal = false;
    std::string_view unit_words = {}; ///< to go behind a bare number
};
/// The cell's text in the one form that the stages read: the words of a choice, and yes or no, in
/// small letters, a point for a decimal comma, a unit behind a bare number. What had to be changed
/// is kept in `made`; the result borrows from there or from `text`.
[[nodiscard]] std::string_view settled(std::string_view text, const CellForm& form,
                                       std::deque<std::string>& made);

} // namespace libsplice
