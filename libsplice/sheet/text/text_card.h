// A bench card as text.
#pragma once

#include "libsplice/sheet/panel/card/card.h"
#include "libsplice/sheet/panel/page.h"

namespace libsplice {

/// `number` is the card's; 0: it has none.
void write_card(Page& page, const Card& card, std::size_t number, UnitSystem units);

} // namespace libsplice
