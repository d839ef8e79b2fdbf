// The last page, for the office: what every card is, what it rests on, and what all sheets say.
#pragma once

#include "libsplice/sheet/panel/like_lines.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/writer.h"

#include <deque>

namespace libsplice {

void write_office(Page& page, const std::deque<LikeLines>& cards, const Counts& counts,
                  const SheetOptions& options, Credits credits, CitationLog& citing);

} // namespace libsplice
