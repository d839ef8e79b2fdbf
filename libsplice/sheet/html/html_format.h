// What is written for a browser.
#pragma once

#include "libsplice/sheet/formats.h"

namespace libsplice {

[[nodiscard]] std::unique_ptr<SheetWriter> html_sheet(Output& output, Credits credits,
                                                      const SheetOptions& options);
void write_end_as_html(const EndSheet& sheet, Output& output, Credits credits,
                       const SheetOptions& options);
void write_reel_as_html(const ReelSheet& sheet, Output& output, UnitSystem units);
void write_stretch_as_html(const StretchAnswer& answer, Output& output, Credits credits,
                           const SheetOptions& options);

} // namespace libsplice
