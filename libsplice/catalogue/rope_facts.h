// What a shop knows of a rope from the reel in hand, as texts, on its way into a Rope.
#pragma once

#include "libsplice/catalogue/rope.h"
#include "libsplice/units/unit.h"

#include <array>
#include <cstdint>
#include <functional>
#include <optional>
#include <string_view>

namespace libsplice {

/// One such fact.
enum class RopeFact : std::uint8_t {
    breaking,          ///< minimum breaking strength: `6.2 kN`
    stretch,           ///< at a pull: `2.4 % at 20 %`; two or more make a curve: `1 % at 10 %, ...`
    core_diameter,     ///< under the cover, measured: `4.1 mm`
    measured_diameter, ///< `6.3 mm`
    mass,              ///< of a metre: `27 g/m`
    price,             ///< of a metre, in the shop's own money: `2.40`, `2.40/m`
    prestretched,      ///< sold so: `yes`
};
inline constexpr std::size_t rope_fact_count = static_cast<std::size_t>(RopeFact::prestretched) + 1;

/// The text of a fact, and the unit of length that its heading gives.
struct FactText {
    std::string_view text; ///< empty: not stated
    std::optional<LengthUnit> unit = {};
};
using FactTexts = std::array<FactText, rope_fact_count>;

/// Puts the facts into `rope`, in place of what it has from elsewhere, each with `source`. What is
/// wrong with one is handed to `refuse`, without a place: Code::not_a_length, not_a_number,
/// not_a_tension, not_a_choice, value_out_of_range; the others are put in all the same.
void state_facts(Rope& rope, const FactTexts& facts, CitationId source,
                 const std::function<void(RopeFact, Fault)>& refuse);

/// Reads `2.4 % at 20 %` or several of them separated by commas; the loads rise, and are all shares
/// of the breaking strength or all forces. Code::not_a_number, Code::not_a_tension.
[[nodiscard]] Result<RopeStretch> read_stretch_words(std::string_view text, CitationId source);

} // namespace libsplice
