// How much a rope stretches and which size of another stretches no more, as text, CSV and JSON.
#pragma once

#include "libsplice/cut/equal_stretch.h"
#include "libsplice/sheet/writer.h"

namespace libsplice {

/// What was asked, and the answer. Without `equal` only the rope's own stretch was asked for.
struct StretchAnswer {
    Tension load;
    Length length;
    RopeUnderLoad known;
    std::optional<EqualStretch> equal;
};
void write_stretch(const StretchAnswer& answer, Format format, Output& output, const Book& book,
                   const SheetOptions& options);

} // namespace libsplice
