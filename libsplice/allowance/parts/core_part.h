// The core of a covered rope, where it alone is spliced.
#pragma once

#include "libsplice/allowance/kind.h"

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration core{"core",
                                       "diameter of the core",
                                       Dimension::length,
                                       0.0003,
                                       0.2,
                                       "the rope's own figure, else 0.7 of its diameter"};
} // namespace field

/// The core's diameter: the field, the rope's record, or the tables' share of the nominal diameter.
struct CorePart {
    Length diameter;
    Length sd; ///< of the diameter; 0 where it is known
    CitationId source{};
    bool assumed = false; ///< neither the job nor the rope's record gives it
};

/// Code::figure_missing where no source gives even a share, Code::field_out_of_range where the core
/// would be as thick as the rope.
[[nodiscard]] Result<CorePart> read_core(const Request& request, std::size_t field);

/// What goes with an assumed core: a caution, and the spread that its diameter gives the rope round
/// an eye that has been added before.
void add_assumed_core(End& allowance, const CorePart& core);

} // namespace libsplice
