// One end as CSV: the rows of its ledger.
#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/csv/csv_format.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/words/ledger_group.h"

namespace libsplice {

void write_end_as_csv(const EndSheet& sheet, Output& output, Credits credits,
                      const SheetOptions& options) {
    const bool metric = options.units == UnitSystem::metric;
    output.write(metric ? "item,length_m,sd_m,group,source\n"
                        : "item,length_in,sd_in,group,source\n");
    CitationLog citing(credits);
    const auto ledger = ledger_of(sheet.allowance);
    std::string row;
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        const Row& entry = ledger[i].row;
        row.clear();
        append_text_cell(row, credits.names().of(entry.item));
        row += ',';
        append_length_cell(row, entry.length, options.units);
        row += ',';
        append_number_cell(row, metric ? entry.sd : entry.sd / metres_per_inch);
        row += ',';
        append_text_cell(row, group_of(ledger, i, "end", credits.names()));
        row += ',';
        append_text_cell(row, citing.text(entry.source));
        row += '\n';
        output.write(row);
    }
}

} // namespace libsplice
