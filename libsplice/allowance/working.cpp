// The formulas as they are printed.
#include "libsplice/allowance/working.h"

#include <gsl/assert>

#include <algorithm>

namespace libsplice {

namespace {

using enum OperandUnit;

constexpr OperandDeclaration diameter_of_rope{"D", length};
constexpr OperandDeclaration tail_inside{"T", length, "of tail inside"};
constexpr OperandDeclaration thinned{"P", length, "of it thinned"};
constexpr OperandDeclaration pairs_dropped{"n", number, "pairs dropped at even steps"};
constexpr OperandDeclaration strands_of_tail{"N", number, "strands"};
constexpr OperandDeclaration constant_of_braid{"K", number, "of the braid"};
constexpr OperandDeclaration constant_once_loaded{"K", number, "of the braid once it was loaded"};
constexpr OperandDeclaration section_of_tail{"a", number,
                                             "the tail's section as a share of the host's"};
constexpr OperandDeclaration section_at_its_end{"e", number, "the same at its end"};
constexpr OperandDeclaration as_spliced{"U", length, "of take-up as spliced"};
constexpr OperandDeclaration pressure_of_wind{"c", number, "kgf on a square metre at one knot"};
constexpr OperandDeclaration apparent_wind{"V", wind, "of apparent wind"};
constexpr OperandDeclaration parts_of_tackle{"n", number, "parts"};

constexpr std::array table{
    FormulaDeclaration{FormulaId::none, "worked out by the plug-in"},
    FormulaDeclaration{FormulaId::as_job, "as the job says"},
    FormulaDeclaration{FormulaId::less_as_job, "taken off, as the job says"},
    FormulaDeclaration{FormulaId::as_printed, "as the source gives it"},
    FormulaDeclaration{FormulaId::diameters, "{n} D", {{{"n", number}, diameter_of_rope}}},
    FormulaDeclaration{FormulaId::times_diameters,
                       "{f} x {n} D",
                       {{{"f", number}, {"n", number}, diameter_of_rope}}},
    FormulaDeclaration{FormulaId::times_length, "{f} l", {{{"f", number}, {"l", length, "each"}}}},
    FormulaDeclaration{
        FormulaId::eye,
        "R (pi + 2b) + 2t",
        {{{"R", length, "half of pin and rope together"},
          {"h", length, "from the pin's centre to where the legs meet"},
          {"w", length,
           "off the axis, q = sqrt(h^2 + w^2), t = sqrt(q^2 - R^2), b = asin(R/q) - atan(w/h)"},
          {"2b", degrees}}}},
    FormulaDeclaration{
        FormulaId::eye_with_legs,
        "R (pi + 2b) + 2t + 2l",
        {{{"R", length, "half of pin and rope together"},
          {"h", length, "from the pin's centre to where the legs meet"},
          {"w", length,
           "off the axis, q = sqrt(h^2 + w^2), t = sqrt(q^2 - R^2), b = asin(R/q) - atan(w/h)"},
          {"2b", degrees},
          {"l", length, "side by side"}}}},
    FormulaDeclaration{
        FormulaId::to_throat,
        "-E",
        {{{"E", length,
           "from the bearing point to the throat, which lies within the finished length"}}}},
    FormulaDeclaration{FormulaId::not_known_pin, "no length; a spread, because what the eye will "
                                                 "hang on is not known"},
    FormulaDeclaration{FormulaId::not_known_take_up,
                       "no length; a spread, because no source says whether the cover grows longer "
                       "or shorter"},
    FormulaDeclaration{
        FormulaId::take_up,
        "(T - P)/sqrt(1 - aK) + 2P/(sqrt(1 - aK) + sqrt(1 - eK)) - T",
        {{tail_inside, thinned, constant_of_braid, section_of_tail, section_at_its_end}}},
    FormulaDeclaration{
        FormulaId::take_up_by_steps,
        "(T - P)/sqrt(1 - K) + P/(n + 1) sum(1/sqrt(1 - K (1 - 2k/N)), k = 0 to n) - T",
        {{tail_inside, thinned, pairs_dropped, strands_of_tail, constant_of_braid}}},
    FormulaDeclaration{FormulaId::settling,
                       "(T - P)/sqrt(1 - aK) + 2P/(sqrt(1 - aK) + sqrt(1 - eK)) - T - U",
                       {{tail_inside, thinned, constant_once_loaded, section_of_tail,
                         section_at_its_end, as_spliced}}},
    FormulaDeclaration{
        FormulaId::settling_by_steps,
        "(T - P)/sqrt(1 - K) + P/(n + 1) sum(1/sqrt(1 - K (1 - 2k/N)), k = 0 to n) - T - U",
        {{tail_inside, thinned, pairs_dropped, strands_of_tail, constant_once_loaded, as_spliced}}},
    FormulaDeclaration{
        FormulaId::turns,
        "{n} pi (A + D)",
        {{{"n", number}, {"A", length, "across what it goes round"}, diameter_of_rope}}},
    FormulaDeclaration{FormulaId::turns_round_two,
                       "{n} (2 sqrt(C^2 - (r - s)^2) + pi (r + s) + 2 (r - s) asin((r - s)/C))",
                       {{{"n", number},
                         {"r", length, "from the first centre to the middle of the rope"},
                         {"s", length, "from the second"},
                         {"C", length, "from centre to centre"}}}},
    FormulaDeclaration{FormulaId::round_bearings,
                       "pi (B + D) - 2B",
                       {{{"B", length, "across what it bears on"}, diameter_of_rope}}},
    FormulaDeclaration{FormulaId::half_of, "l/2", {{{"l", length}}}},
    FormulaDeclaration{FormulaId::twice_travel, "2t", {{{"t", length, "of travel"}}}},
    FormulaDeclaration{FormulaId::from_route, "along the route"},
    FormulaDeclaration{FormulaId::less_fitting, "less the fitting, from the rope's bearing point "
                                                "to the fitting's working point"},
    FormulaDeclaration{FormulaId::half_pin,
                       "p/2",
                       {{{"p", length, "across the pin, whose centre the job measures to"}}}},
    FormulaDeclaration{
        FormulaId::further_parts, "{n} L", {{{"n", number}, {"L", length, "of one part"}}}},
    FormulaDeclaration{FormulaId::stretch,
                       "L ((1 + m)/(1 + w) - 1)",
                       {{{"L", length, "between the bearing points"},
                         {"m", share, "at the marking tension"},
                         {"w", share, "at the line's tension"}}}},
    FormulaDeclaration{FormulaId::lengthening,
                       "L (1/(1 + s) - 1)",
                       {{{"L", length, "between the bearing points"}, {"s", share}}}},
    FormulaDeclaration{FormulaId::shortening,
                       "L (1/(1 - s) - 1)",
                       {{{"L", length, "between the bearing points"}, {"s", share}}}},
    FormulaDeclaration{FormulaId::milk_out,
                       "the greater of s L and m",
                       {{{"s", share}, {"L", length}, {"m", length}}}},
    FormulaDeclaration{FormulaId::spare,
                       "z s",
                       {{{"z", number},
                         {"s", length,
                          "of spread: spreads of one group added, the groups combined as the root "
                          "of their squares"}}}},
    FormulaDeclaration{FormulaId::rounding, "up to the next whole {u}", {{{"u", length}}}},
    FormulaDeclaration{FormulaId::sheet_load,
                       "c A V^2 kgf",
                       {{pressure_of_wind, {"A", area, "of sail"}, apparent_wind}}},
    FormulaDeclaration{FormulaId::mainsheet_load,
                       "c E^2 P^2 V^2 / (sqrt(P^2 + E^2) (E - X)) / n kgf",
                       {{pressure_of_wind,
                         {"E", length, "of foot"},
                         {"P", length, "of luff"},
                         {"X", length, "from the boom's end to the sheet"},
                         apparent_wind,
                         parts_of_tackle}}},
    FormulaDeclaration{
        FormulaId::block_load,
        "2 T sin(a/2)",
        {{{"T", force, "in the line"}, {"a", degrees, "by which the block turns it"}}}},
    FormulaDeclaration{FormulaId::tackle_load,
                       "W (1 + f s)/n",
                       {{{"W", force, "on the tackle"},
                         {"f", share, "lost at each sheave"},
                         {"s", number, "sheaves"},
                         parts_of_tackle}}},
    FormulaDeclaration{FormulaId::righting_load,
                       "g (m B/2 + c (B + o))/r",
                       {{{"m", mass, "of the boat"},
                         {"B", length, "of beam over all"},
                         {"c", mass, "of the crew"},
                         {"o", length, "of their weight outside the hull"},
                         {"r", length, "from the axis of heel to the line"}}}},
};

constexpr bool is_in_order() {
    for (std::size_t i = 0; i < table.size(); ++i) {
        if (static_cast<std::size_t>(table.at(i).id) != i) {
            return false;
        }
    }
    return true;
}
static_assert(table.size() == static_cast<std::size_t>(FormulaId::righting_load) + 1 &&
              is_in_order());

} // namespace

std::size_t FormulaDeclaration::operand_count() const {
    return static_cast<std::size_t>(
        std::ranges::count_if(operands, [](const OperandDeclaration& operand) {
            return operand.unit != OperandUnit::none;
        }));
}

const FormulaDeclaration& declaration_of(FormulaId id) {
    return table.at(static_cast<std::size_t>(id));
}

Working::Working(FormulaId id, std::initializer_list<double> in_order) : formula(id) {
    Expects(in_order.size() == declaration_of(id).operand_count());
    for (const double value : in_order) {
        numbers.push_back(value);
    }
}

} // namespace libsplice
