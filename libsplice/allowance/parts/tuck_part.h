// Strands unlaid and tucked, as splices in laid and plaited rope need them.
#pragma once

#include "libsplice/allowance/kind.h"
#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

/// The fields that describe tucks, for the declarations of kinds.
namespace field {
inline constexpr FieldDeclaration tucks{
    "tucks", "full tucks of every strand", Dimension::count, 1.0,
    20.0,    "the rule's number of tucks"};
inline constexpr FieldDeclaration end_left{"end_left",
                                           "what is left of each strand past the last full tuck",
                                           Dimension::length,
                                           0.0,
                                           2.0,
                                           "the published minimum"};
inline constexpr FieldDeclaration pick{"pick",
                                       "length of one pick along the rope, for a plait",
                                       Dimension::length,
                                       0.0005,
                                       0.5,
                                       "the table's multiple of D"};
} // namespace field

/// Which of a kind's fields describe its tucks; `pick` only where the kind is made in plaits.
struct TuckFields {
    std::size_t tucks;
    std::size_t end_left;
    std::optional<std::size_t> pick = {};
};

/// The tucks of one end or of one side of a join.
struct TuckPart {
    double count = 0.0;   ///< full tucks
    double singles = 0.0; ///< further tucks with single strands, 0 where the rule has none
    double halves = 0.0;  ///< and with halved strands
    SourcedLength unlaid; ///< strand for all of them
    SourcedLength end_left;
};

/// Works the tucks out. Code::below_published_minimum for too few tucks or too short an end left,
/// Code::figure_missing.
[[nodiscard]] Result<TuckPart> read_tucks(const Request& request, TuckFields fields);

/// Rows, the cut, values and the tapering shape; returns where the unlaying stops. The mark there
/// is the kind's own.
[[nodiscard]] Nanometres add_tucks(End& allowance, const TuckPart& tucks, const Request& request);

} // namespace libsplice
