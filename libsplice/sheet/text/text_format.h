// What is written as text.
#pragma once

#include "libsplice/sheet/formats.h"

namespace libsplice {

[[nodiscard]] std::unique_ptr<SheetWriter> text_sheet(Output& output, Credits credits,
                                                      const SheetOptions& options);
void write_end_as_text(const EndSheet& sheet, Output& output, Credits credits,
                       const SheetOptions& options);
void write_reel_as_text(const ReelSheet& sheet, Output& output, UnitSystem units);
void write_stretch_as_text(const StretchAnswer& answer, Output& output, Credits credits,
                           const SheetOptions& options);

} // namespace libsplice
