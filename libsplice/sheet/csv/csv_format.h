// What is written as CSV.
#pragma once

#include "libsplice/sheet/formats.h"

namespace libsplice {

[[nodiscard]] std::unique_ptr<SheetWriter> csv_sheet(Output& output, Credits credits,
                                                     const SheetOptions& options);
void write_end_as_csv(const EndSheet& sheet, Output& output, Credits credits,
                      const SheetOptions& options);
void write_reel_as_csv(const ReelSheet& sheet, Output& output, UnitSystem units);
void write_stretch_as_csv(const StretchAnswer& answer, Output& output, Credits credits,
                          const SheetOptions& options);

} // namespace libsplice
