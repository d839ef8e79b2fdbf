// The formats that answers are written in, each a row of one table.
#pragma once

#include "libsplice/sheet/reel/reel_sheet.h"
#include "libsplice/sheet/writer.h"

#include <memory>
#include <span>
#include <string_view>

namespace libsplice {

struct StretchAnswer;

/// A format: its name, and what writes each sort of answer in it.
struct FormatRow {
    std::string_view name;
    /// A writer of a cut sheet; the output, and the book that gets the credit, must outlive it.
    std::unique_ptr<SheetWriter> (*cut)(Output& output, Credits credits,
                                        const SheetOptions& options);
    void (*end)(const EndSheet& sheet, Output& output, Credits credits,
                const SheetOptions& options);
    void (*reel)(const ReelSheet& sheet, Output& output, UnitSystem units);
    void (*stretch)(const StretchAnswer& answer, Output& output, Credits credits,
                    const SheetOptions& options);
    bool has_pages = false;    ///< laid out on paper: an answer of a few figures is not written so
    bool lengths_only = false; ///< its cut sheet has no marks and no steps
};

/// All formats in order of `Format`.
[[nodiscard]] std::span<const FormatRow> formats();
[[nodiscard]] const FormatRow& row_of(Format format);

} // namespace libsplice
