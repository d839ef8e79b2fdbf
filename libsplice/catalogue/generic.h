// What any rope of one construction and fibre holds at least, as far as print was read.
#pragma once

#include "libsplice/catalogue/rope.h"
#include "libsplice/catalogue/rule.h"

#include <optional>
#include <span>
#include <string>

namespace libsplice {

/// One record of `tables/generic.toml`: strength and mass go with the square of the diameter.
struct GenericRope {
    std::string id;
    Construction construction{};
    Fibre fibre{};
    FibreGrade grade = FibreGrade::unknown;
    PrintedSize from;  ///< smallest diameter that print was read for
    PrintedSize up_to; ///< largest
    /// Minimum breaking strength over the squared diameter, newtons over square metres: at or below
    /// all that was read.
    std::optional<Sourced<double>> breaking;
    /// A metre's mass over the squared diameter, kilograms over cubic metres: the heaviest read.
    std::optional<Sourced<double>> mass;
};

/// Gives `rope` the strength and mass that print lets any rope of its sort and size have, where it
/// has none of its own; what it had from here before is worked out anew. A rope labelled 5 or 10 mm
/// may be one of 3/16 or 3/8 in: unless it was measured, the less of both is taken.
void add_generic_figures(Rope& rope, std::span<const GenericRope> generics);

} // namespace libsplice
