// How much a rope stretches as CSV: a row for the rope, then one for each size of the other.
#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/csv/csv_format.h"
#include "libsplice/sheet/panel/stretch_answer.h"

namespace libsplice {

void write_stretch_as_csv(const StretchAnswer& answer, Output& output, Credits /*credits*/,
                          const SheetOptions& options) {
    const UnitSystem units = options.units;
    const bool metric = units == UnitSystem::metric;
    output.write(metric ? "rope,diameter_m,stretch_m,sd_m\n"
                        : "rope,diameter_in,stretch_in,sd_in\n");
    std::string row;
    const auto write_row = [&](const RopeUnderLoad& loaded) {
        row.clear();
        append_text_cell(row, loaded.rope.id);
        for (const Length length : {loaded.rope.diameter, loaded.longer}) {
            row += ',';
            append_length_cell(row, to_nanometres(length), units);
        }
        row += ',';
        append_number_cell(row, metric ? loaded.sd.si() : loaded.sd.si() / metres_per_inch);
        row += '\n';
        output.write(row);
    };
    write_row(answer.known);
    if (answer.equal) {
        for (const RopeUnderLoad& size : answer.equal->sizes) {
            write_row(size);
        }
    }
}

} // namespace libsplice
