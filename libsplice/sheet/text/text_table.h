// A job as one table on a terminal.
#pragma once

#include "libsplice/base/output.h"
#include "libsplice/sheet/panel/like_lines.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/units/show.h"

#include <deque>

namespace libsplice {

/// A row for each sort of line: name, boats, rope in words, finished, cut, ends and how many
/// cautions it has; below it each caution once, with the rows that it belongs to, and why what is
/// not cut is not. Columns are as wide as their contents need.
void write_table(Output& output, const std::deque<LikeLines>& lines, UnitSystem units,
                 CitationLog& citing);

} // namespace libsplice
