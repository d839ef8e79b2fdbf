// What a line asks of its rope, from its own cells and from its place.
#pragma once

#include "libsplice/choose/choice_tables.h"
#include "libsplice/choose/need_words.h"
#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"
#include "libsplice/units/tension.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace libsplice {

/// The diameters that a cleat or clutch takes.
struct DiameterRange {
    Length from;
    Length up_to;
};

/// Every need may be absent, and then it is not asked for.
struct Needs {
    std::string place; ///< of the tables; empty: none
    bool carries_person = false;
    std::optional<Force> load;               ///< the greatest in use
    std::optional<LoadWorking> load_working; ///< of a load that is worked out
    std::optional<Tension> set;              ///< the pull when the line is set
    std::optional<Length> most_give;         ///< how far it may give from set to load
    std::optional<Standing> standing;        ///< how long the load stands
    std::vector<Holder> held_by;
    std::optional<DiameterRange> held_range;
    std::optional<Length> sheave; ///< the smallest that it turns on
    std::optional<Length> smallest_hole;
    std::optional<Handling> hand;
    std::optional<Running> runs;
    bool floats = false;
    std::optional<double> price_limit; ///< of a metre, in the shop's own money
    Cited<std::vector<Fibre>> usual;   ///< fibres in such a place; among ropes without a price
    /// By need column: where it comes from; nothing where it is not asked for.
    std::array<std::optional<Citation>, need_columns.size()> sources;
};

/// A line with the defaults of its place in the cells of needs that it leaves empty. The line's
/// texts and the tables outlive it.
struct PlacedLine {
    JobLine line;
    const CitedRecord* place = nullptr; ///< null: the line names no place
    std::array<std::optional<Citation>, need_columns.size()> sources;
};

/// Fills in the place that the line names. A place that no table has is Code::not_a_choice.
[[nodiscard]] PlacedLine with_place(const JobLine& line, const ChoiceTables& tables,
                                    CellReader& cells);

/// Reads the needs of a line whose place is filled in. Every fault is added to `cells`, which reads
/// that line: Code::not_a_length, not_a_tension, not_a_choice, not_a_number, value_out_of_range.
[[nodiscard]] Needs read_needs(const PlacedLine& placed, const Catalogue& catalogue,
                               CellReader& cells);

/// The source of a need, by its place in `need_columns`, as text; empty if it is not asked for.
[[nodiscard]] std::string source_of_need(const Needs& needs, std::size_t need);

} // namespace libsplice
