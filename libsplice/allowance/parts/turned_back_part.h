// An eye in wire whose end is turned back along the standing part and held there.
#pragma once

#include "libsplice/allowance/parts/eye_part.h"
#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

/// What such an eye is made of.
struct TurnedBackPart {
    EyePart eye;
    SourcedLength turned; ///< from the throat to the wire's end
    Span::Form held{};    ///< what holds the turned-back wire: clips, or a sleeve
    double count = 1.0;   ///< of clips or sleeves
};

/// Rows, marks, the value and the span of the turn-back. The mark at the near throat is where the
/// turn-back starts.
void add_turned_back(End& allowance, const TurnedBackPart& part);
/// What the eye says of itself, of the bend over its pin and of the strength that it retains.
void add_turned_back_facts(End& allowance, const TurnedBackPart& part, const Request& request);

} // namespace libsplice
