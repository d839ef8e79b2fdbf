// One end for a browser, with its drawings.
#include "libsplice/sheet/drawing/bearing_sketch.h"
#include "libsplice/sheet/drawing/drawing.h"
#include "libsplice/sheet/html/html_format.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/panel/end_panel.h"

namespace libsplice {

void write_end_as_html(const EndSheet& sheet, Output& output, Credits credits,
                       const SheetOptions& options) {
    std::string text = html_start("One end");
    {
        HtmlPage page(text);
        CitationLog citing(credits);
        const EndPanel panel{page, sheet, credits, options.units, citing};
        panel.title();
        page.close();
        text += "<div class=\"draw\">";
        append_drawing(text, sheet.kind, sheet.allowance, sheet.rope.counting_diameter(),
                       credits.names(), options.units);
        text += "</div>\n";
        if (sheet.kind.reach != Reach::both_ends) {
            append_bearing_sketch(text, sheet.kind, sheet.allowance);
        }
        panel.marks();
        panel.work();
        page.close();
        text += "<details><summary>Ledger and figures</summary>\n";
        panel.ledger();
        panel.figures();
        page.close();
        text += "</details>\n";
        panel.foot();
    }
    output.write(text);
    output.write(html_finish());
}

} // namespace libsplice
