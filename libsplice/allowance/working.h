// How a length was worked out: its formula, and the numbers that went in.
#pragma once

#include "libsplice/base/short_list.h"

#include <array>
#include <cstdint>
#include <initializer_list>
#include <span>
#include <string_view>

namespace libsplice {

/// The formulas that rows and loads are made with.
enum class FormulaId : std::uint8_t {
    none,
    as_job,
    less_as_job,
    as_printed,
    diameters,
    times_diameters,
    times_length,
    eye,
    eye_with_legs,
    to_throat,
    not_known_pin,
    not_known_take_up,
    take_up,
    take_up_by_steps,
    settling,
    settling_by_steps,
    turns,
    turns_round_two,
    round_bearings,
    half_of,
    twice_travel,
    from_route,
    less_fitting,
    half_pin,
    further_parts,
    stretch,
    lengthening,
    shortening,
    milk_out,
    spare,
    rounding,
    sheet_load,
    mainsheet_load,
    block_load,
    tackle_load,
    righting_load,
};

/// What sort of number an operand is.
enum class OperandUnit : std::uint8_t {
    none,
    length,
    number,
    share,
    degrees,
    force,
    area,
    wind, ///< in metres per second, shown in knots
    mass,
};

/// A letter of a formula, and what it stands for.
struct OperandDeclaration {
    std::string_view letter;
    OperandUnit unit = OperandUnit::none;
    std::string_view meaning = {}; ///< follows its number; may be empty
};

/// The most letters that a formula has.
inline constexpr std::size_t most_operands = 6;

/// A formula as it is printed. `{n}` is replaced by the operand's number; the other operands follow
/// the formula.
struct FormulaDeclaration {
    FormulaId id{};
    std::string_view text;
    std::array<OperandDeclaration, most_operands> operands{};

    [[nodiscard]] std::size_t operand_count() const;
};
[[nodiscard]] const FormulaDeclaration& declaration_of(FormulaId id);

/// A formula with its numbers, in SI units and in the order of the formula's operands.
struct Working {
    FormulaId formula = FormulaId::none;
    ShortList<double, most_operands> numbers;
    int sides = 1; ///< 2 where the row counts both sides of an item made whole

    Working() = default;
    Working(FormulaId id, std::initializer_list<double> in_order);
};

} // namespace libsplice
