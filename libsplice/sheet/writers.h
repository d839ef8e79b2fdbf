// The writers of each format, for the factory that chooses among them.
#pragma once

#include "libsplice/sheet/writer.h"

namespace libsplice {

[[nodiscard]] std::unique_ptr<SheetWriter> text_sheet(Output& output, const Book& book,
                                                      const SheetOptions& options);
[[nodiscard]] std::unique_ptr<SheetWriter> csv_sheet(Output& output, const Book& book,
                                                     const SheetOptions& options);
[[nodiscard]] std::unique_ptr<SheetWriter> json_sheet(Output& output, const Book& book,
                                                      const SheetOptions& options);
[[nodiscard]] std::unique_ptr<SheetWriter> html_sheet(Output& output, const Book& book,
                                                      const SheetOptions& options);

void write_end_as_text(const EndSheet& sheet, Output& output, const Book& book,
                       const SheetOptions& options);
void write_end_as_csv(const EndSheet& sheet, Output& output, const Book& book,
                      const SheetOptions& options);
void write_end_as_json(const EndSheet& sheet, Output& output, const Book& book);
void write_end_as_html(const EndSheet& sheet, Output& output, const Book& book,
                       const SheetOptions& options);

/// The rows of an end as a ledger of its own.
[[nodiscard]] std::vector<LedgerRow> ledger_of(const Allowance& allowance);

} // namespace libsplice
