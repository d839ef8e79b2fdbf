// An eye whose tail lies along the standing part and is stitched or seized to it.
#pragma once

#include "libsplice/allowance/parts/eye_part.h"
#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

/// How the tail of such an eye lies.
struct LapPart {
    SourcedLength tail;   ///< the whole end beyond the throat
    Length held;          ///< from the throat, how far the stitching or the first seizing reaches
    MarkName held_mark{}; ///< where that ends on the standing part
    ValueName held_value{};
    Span::Form holds{}; ///< stitched or seized
};

/// The allowance of an eye whose tail lies along the standing part, all but its steps. The tail's
/// end is sealed where the rope allows it. Code::field_out_of_range for `tail_field` where the tail
/// is shorter than what holds it.
[[nodiscard]] Result<End> eye_with_lap(const Request& request, const EyePart& eye,
                                       const LapPart& lap, std::string_view tail_field);

/// No source says what stitches or seizings hold: a caution, and a refusal for a person.
void add_untested_caution(End& allowance, const Request& request);

} // namespace libsplice
