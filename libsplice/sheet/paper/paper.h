// What is hung up or tied on: a wall chart, and a label for every piece. Both are HTML pages to
// print.
#pragma once

#include "libsplice/sheet/paper/label_sheets.h"
#include "libsplice/sheet/writer.h"

#include <memory>

namespace libsplice {

/// A page for each boat: every line with its rope, finished and cut length and ends. Boats that are
/// roped alike share a page.
[[nodiscard]] std::unique_ptr<SheetWriter> wall_chart(Output& output, const SheetOptions& options);

/// A label for each piece with name, boat, rope, cut length, its line of the job, and the same as a
/// QR code. A line that cannot be cut gets none.
[[nodiscard]] std::unique_ptr<SheetWriter> label_sheet(Output& output, const SheetOptions& options,
                                                       const LabelSheet& sheet);

} // namespace libsplice
