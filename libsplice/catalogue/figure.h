// One number of a table, as printed, with its spread and its source.
#pragma once

#include "libsplice/catalogue/citation.h"
#include "libsplice/catalogue/figures.h"
#include "libsplice/units/quantity.h"

#include <cstdint>
#include <string_view>

namespace libsplice {

/// Where a standard deviation comes from.
enum class SpreadOrigin : std::uint8_t { none, measured, printed_range, stated_guess };
[[nodiscard]] std::string_view name_of(SpreadOrigin origin);

/// A figure as it stands in a table. `value`, `sd` and the limits are in the printed unit.
struct Figure {
    double value = 0.0;
    double sd = 0.0;
    double low = 0.0;  ///< the lowest it may be: as printed, else what its spread comes to
    double high = 0.0; ///< the highest
    FigureUnit unit = FigureUnit::none;
    SpreadOrigin origin = SpreadOrigin::none;
    CitationId source{};

    /// The figure as a length on rope of that diameter. The unit must be a length, diameters, or
    /// a count of them; percentages and counts are not lengths.
    [[nodiscard]] Length length(Length diameter) const { return scale(diameter) * value; }
    [[nodiscard]] Length spread(Length diameter) const { return scale(diameter) * sd; }
    /// A count as it is, a percentage as a share of one, degrees as degrees.
    [[nodiscard]] double number() const { return value * factor(); }
    [[nodiscard]] double number_spread() const { return sd * factor(); }
    [[nodiscard]] double lowest_number() const { return low * factor(); }
    [[nodiscard]] double highest_number() const { return high * factor(); }

  private:
    [[nodiscard]] Length scale(Length diameter) const;
    [[nodiscard]] double factor() const { return unit == FigureUnit::percent ? 0.01 : 1.0; }
};

} // namespace libsplice
