// The one table of a job's columns: name, meaning, and what the stages need to know of each.
#pragma once

#include "libsplice/job/cell_sort.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace libsplice {

/// The fixed columns of a job file, in the order in which they are listed.
enum class Column : std::uint8_t {
    name,
    boat,
    quantity,
    rope,
    length,
    route,
    tension,
    end_a,
    end_b,
    fit,
    tolerance,
    first_end,
    state,
    prestretched,
    carries_person,
    load,
    spare,
    extra,
    wear,
    pair,
    fit_first,
    lot,
    colour,
    note,
    strip,
    sleeve,
    middle,
    headroom,
    travel,
    cleat,
    smallest_hole,
    reversible,
    wash,
    stretch,
    rope_breaking,
    rope_stretch,
    rope_core,
    rope_measured,
    rope_mass,
    rope_price,
    rope_prestretched,
    place,
    set_tension,
    most_give,
    standing,
    held_by,
    held_range,
    sheave,
    hand,
    runs,
    floats,
    price_limit,
};

/// What a TOML job may write in a cell besides text, a number, true or false.
enum class CellShape : std::uint8_t {
    plain,  ///< nothing else
    list,   ///< an array of plain values, which become one text with commas
    table,  ///< a table
    tables, ///< an array of tables
};

/// All that is known of one column.
struct ColumnDeclaration {
    Column id;
    std::string_view name;    ///< as in a heading
    std::string_view meaning; ///< in one line, for help and documents
    CellSort sort = CellSort::text;
    CellShape shape = CellShape::plain;
    /// Whether the cell decides how a line is made: lines that agree in all such cells share one
    /// plan. Say false only of what changes no length, no mark, no step and no caution of an end.
    bool decides = true;
};

inline constexpr auto job_columns = std::to_array<ColumnDeclaration>({
    {.id = Column::name,
     .name = "name",
     .meaning = "what the line is called; required",
     .decides = false},
    {.id = Column::boat,
     .name = "boat",
     .meaning = "the boat that it belongs to",
     .decides = false},
    {.id = Column::quantity,
     .name = "quantity",
     .meaning = "how many to cut, 1 to 1,000,000; 1 unless given",
     .sort = CellSort::count,
     .decides = false},
    {.id = Column::rope,
     .name = "rope",
     .meaning = "its rope: a table id, or construction, fibre and diameter; required",
     .sort = CellSort::rope},
    {.id = Column::length,
     .name = "length",
     .meaning = "finished length, bearing point to bearing point; this or a route",
     .sort = CellSort::length,
     .decides = false},
    {.id = Column::route,
     .name = "route",
     .meaning = "the way that the line runs, from which its length is worked out; this or a length",
     .sort = CellSort::route,
     .shape = CellShape::table},
    {.id = Column::tension,
     .name = "tension",
     .meaning = "the pull at which that length holds; the rope's reference tension unless given",
     .sort = CellSort::force},
    {.id = Column::end_a,
     .name = "end_a",
     .meaning = "the kind of end a; bare unless given",
     .sort = CellSort::end,
     .shape = CellShape::table},
    {.id = Column::end_b,
     .name = "end_b",
     .meaning = "the kind of end b; bare unless given",
     .sort = CellSort::end,
     .shape = CellShape::table},
    {.id = Column::fit,
     .name = "fit",
     .meaning = "exact (within a tolerance each way), trim-aboard (cut to fit aboard) or at-least "
                "(never short); at-least unless given",
     .sort = CellSort::choice},
    {.id = Column::tolerance,
     .name = "tolerance",
     .meaning = "how far an exact line may be out, each way",
     .sort = CellSort::length},
    {.id = Column::first_end,
     .name = "first_end",
     .meaning = "the end that is made first, a or b; a unless given",
     .sort = CellSort::choice},
    {.id = Column::state,
     .name = "state",
     .meaning =
         "the state in which the length holds, such as hoisted or eased; shown beside the length"},
    {.id = Column::prestretched,
     .name = "prestretched",
     .meaning = "yes if the rope has been loaded before, so that its first stretch is out; no "
                "unless given",
     .sort = CellSort::yes_no},
    {.id = Column::carries_person,
     .name = "carries_person",
     .meaning = "yes if the line carries a person; no unless given",
     .sort = CellSort::yes_no},
    {.id = Column::load,
     .name = "load",
     .meaning = "the greatest load in use, from which the design factor is worked out: a force, or "
                "in a TOML job the sail, tackle or boat that makes it",
     .sort = CellSort::force,
     .shape = CellShape::table},
    {.id = Column::spare,
     .name = "spare",
     .meaning =
         "rope against coming out short, as a length; instead of working it out from the risk",
     .sort = CellSort::length},
    {.id = Column::extra,
     .name = "extra",
     .meaning = "rope to be cut to fit later; a row of its own",
     .sort = CellSort::length},
    {.id = Column::wear,
     .name = "wear",
     .meaning = "rope to make the worn end again, at the end made last",
     .sort = CellSort::length},
    {.id = Column::pair,
     .name = "pair",
     .meaning = "a name shared by lines that must match",
     .decides = false},
    {.id = Column::fit_first,
     .name = "fit_first",
     .meaning = "what must be on the rope before an end closes",
     .shape = CellShape::list},
    {.id = Column::lot,
     .name = "lot",
     .meaning = "the lot that the rope must come from",
     .decides = false},
    {.id = Column::colour, .name = "colour", .meaning = "the colour of the rope", .decides = false},
    {.id = Column::note,
     .name = "note",
     .meaning = "anything worth saying to the bench",
     .decides = false},
    {.id = Column::strip,
     .name = "strip",
     .meaning =
         "how far the cover is taken off, from the bearing point of end a on the finished line",
     .sort = CellSort::length,
     .shape = CellShape::list},
    {.id = Column::sleeve,
     .name = "sleeve",
     .meaning = "a sleeve over the line, its finished length and where it starts: 0.6 m at 8.2 m",
     .sort = CellSort::measures,
     .shape = CellShape::list},
    {.id = Column::middle,
     .name = "middle",
     .meaning = "what is made between the ends: its kind, and how far it is from the bearing point "
                "of end a: cow-hitch at 3.1 m",
     .sort = CellSort::measures,
     .shape = CellShape::tables},
    {.id = Column::headroom,
     .name = "headroom",
     .meaning = "from the bearing point of end a to the sheave it comes up to, hoisted",
     .sort = CellSort::length},
    {.id = Column::travel,
     .name = "travel",
     .meaning =
         "how far the line runs from hoisted to lowered; of elastic: how much longer its way gets",
     .sort = CellSort::length},
    {.id = Column::cleat,
     .name = "cleat",
     .meaning = "from the bearing point of end a to the cleat, hoisted",
     .sort = CellSort::length},
    {.id = Column::smallest_hole,
     .name = "smallest_hole",
     .meaning = "the smallest hole or sheave that the made line goes through",
     .sort = CellSort::length},
    {.id = Column::reversible,
     .name = "reversible",
     .meaning = "yes if the line is to be turned end for end when one end is worn; no unless given",
     .sort = CellSort::yes_no},
    {.id = Column::wash,
     .name = "wash",
     .meaning = "yes if the line will be washed or soaked after it is made; no unless given",
     .sort = CellSort::yes_no},
    {.id = Column::stretch,
     .name = "stretch",
     .meaning = "how far elastic is pulled out over its relaxed length when its way is shortest, "
                "as 30 %; its length is that way",
     .sort = CellSort::measures},
    {.id = Column::rope_breaking,
     .name = "rope_breaking",
     .meaning = "minimum breaking strength of the reel in hand",
     .sort = CellSort::force},
    {.id = Column::rope_stretch,
     .name = "rope_stretch",
     .meaning = "how far the reel in hand stretches, and at which pull: 2.4 % at 20 %",
     .sort = CellSort::measures},
    {.id = Column::rope_core,
     .name = "rope_core",
     .meaning = "measured diameter of its core, under the cover",
     .sort = CellSort::length},
    {.id = Column::rope_measured,
     .name = "rope_measured",
     .meaning = "its measured diameter, if it differs from the nominal one",
     .sort = CellSort::length},
    {.id = Column::rope_mass,
     .name = "rope_mass",
     .meaning = "what a metre of it weighs",
     .sort = CellSort::mass},
    {.id = Column::rope_price,
     .name = "rope_price",
     .meaning = "what a metre of it costs",
     .sort = CellSort::price},
    {.id = Column::rope_prestretched,
     .name = "rope_prestretched",
     .meaning = "yes if it is sold pre-stretched; no unless given",
     .sort = CellSort::yes_no},
    {.id = Column::place,
     .name = "place",
     .meaning =
         "the place aboard whose needs hold if the line does not say its own, such as main halyard",
     .decides = false},
    {.id = Column::set_tension,
     .name = "set_tension",
     .meaning = "for the choice of rope: the pull when the line is set",
     .sort = CellSort::force,
     .decides = false},
    {.id = Column::most_give,
     .name = "most_give",
     .meaning = "for the choice of rope: how far the line may give from set to load",
     .sort = CellSort::length,
     .decides = false},
    {.id = Column::standing,
     .name = "standing",
     .meaning = "for the choice of rope: how long the load lasts: seconds, race or season",
     .sort = CellSort::choice,
     .decides = false},
    {.id = Column::held_by,
     .name = "held_by",
     .meaning = "for the choice of rope: what holds it: cleat, clutch, lock, knot, winch or splice",
     .sort = CellSort::choice,
     .shape = CellShape::list,
     .decides = false},
    {.id = Column::held_range,
     .name = "held_range",
     .meaning = "for the choice of rope: the diameters that this takes: 4-8 mm",
     .sort = CellSort::measures,
     .decides = false},
    {.id = Column::sheave,
     .name = "sheave",
     .meaning = "for the choice of rope: diameter of the smallest sheave it runs over",
     .sort = CellSort::length,
     .decides = false},
    {.id = Column::hand,
     .name = "hand",
     .meaning = "for the choice of rope: how much it is handled: none, now-and-then or all-day",
     .sort = CellSort::choice,
     .decides = false},
    {.id = Column::runs,
     .name = "runs",
     .meaning = "for the choice of rope: how it runs: stands, adjusted, runs or runs-hot",
     .sort = CellSort::choice,
     .decides = false},
    {.id = Column::floats,
     .name = "floats",
     .meaning = "for the choice of rope: yes if it must float",
     .sort = CellSort::yes_no,
     .decides = false},
    {.id = Column::price_limit,
     .name = "price_limit",
     .meaning = "for the choice of rope: the most that a metre of it may cost",
     .sort = CellSort::price,
     .decides = false},
});
inline constexpr std::size_t column_count = job_columns.size();

namespace detail {
/// Whether each row of `job_columns` is that of its own index, named and explained.
consteval bool columns_are_in_order() {
    for (std::size_t i = 0; i < job_columns.size(); ++i) {
        if (static_cast<std::size_t>(job_columns[i].id) != i || job_columns[i].name.empty() ||
            job_columns[i].meaning.empty()) {
            return false;
        }
    }
    return true;
}
consteval bool column_names_differ() {
    for (std::size_t i = 0; i < job_columns.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (job_columns[i].name == job_columns[j].name) {
                return false;
            }
        }
    }
    return true;
}
} // namespace detail
static_assert(detail::columns_are_in_order(), "each column has its row, in the order of Column");
static_assert(detail::column_names_differ(), "no two columns have one name");
static_assert(column_count == static_cast<std::size_t>(Column::price_limit) + 1,
              "the last column is the last row");

/// The row of a column.
[[nodiscard]] constexpr const ColumnDeclaration& declaration_of(Column column) {
    return job_columns.at(static_cast<std::size_t>(column));
}
/// The column's name as in a heading.
[[nodiscard]] constexpr std::string_view column_name(Column column) {
    return declaration_of(column).name;
}

/// The names of all columns, in order.
inline constexpr auto column_names = [] {
    std::array<std::string_view, column_count> names;
    for (std::size_t i = 0; i < column_count; ++i) {
        names.at(i) = job_columns.at(i).name;
    }
    return names;
}();

} // namespace libsplice
