// A plan of reels for people.
#pragma once

#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/reel/reel_sheet.h"
#include "libsplice/units/show.h"

namespace libsplice {

/// What to cut from what, what to order, what has no place, and the rope's ledger.
void write_reel_plan(Page& page, const ReelSheet& sheet, UnitSystem units);

} // namespace libsplice
