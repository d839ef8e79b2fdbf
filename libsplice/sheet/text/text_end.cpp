// One end as text.
#include "libsplice/sheet/panel/end_panel.h"
#include "libsplice/sheet/text/text_format.h"
#include "libsplice/sheet/text/text_page.h"

namespace libsplice {

void write_end_as_text(const EndSheet& sheet, Output& output, Credits credits,
                       const SheetOptions& options) {
    TextPage page(output);
    CitationLog citing(credits);
    const EndPanel panel{page, sheet, credits, options.units, citing};
    panel.title();
    panel.ledger();
    panel.marks();
    panel.figures();
    panel.work();
    panel.foot();
}

} // namespace libsplice
