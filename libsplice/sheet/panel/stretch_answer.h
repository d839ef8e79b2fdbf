// How much a rope stretches, and which size of another stretches no more.
#pragma once

#include "libsplice/cut/credits.h"
#include "libsplice/cut/equal_stretch.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

#include <optional>

namespace libsplice {

/// What was asked, and the answer. Without `equal` only the rope's own stretch was asked for.
struct StretchAnswer {
    Tension load;
    std::optional<Force> force; ///< that load in newtons; nothing for a share of unknown strength
    Length length;
    RopeUnderLoad known;
    std::optional<EqualStretch> equal;
};

/// The answer for people, with what every sheet says and its sources.
void write_stretch_answer(Page& page, const StretchAnswer& answer, Credits credits,
                          UnitSystem units);

} // namespace libsplice
