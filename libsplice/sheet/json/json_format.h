// What is written as JSON.
#pragma once

#include "libsplice/sheet/formats.h"

namespace libsplice {

[[nodiscard]] std::unique_ptr<SheetWriter> json_sheet(Output& output, Credits credits,
                                                      const SheetOptions& options);
void write_end_as_json(const EndSheet& sheet, Output& output, Credits credits,
                       const SheetOptions& options);
void write_reel_as_json(const ReelSheet& sheet, Output& output, UnitSystem units);
void write_stretch_as_json(const StretchAnswer& answer, Output& output, Credits credits,
                           const SheetOptions& options);

} // namespace libsplice
