// One end for a browser, with its drawings.
#include "libsplice/sheet/drawing/bearing_sketch.h"
#include "libsplice/sheet/drawing/drawing.h"
#include "libsplice/sheet/html/html_format.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/panel/end_panel.h"

namespace libsplice {

void write_end_as_html(const EndSheet& sheet, Output& output, const Book& book,
                       const SheetOptions& options) {
    std::string text = html_start("One end");
    {
        HtmlPage page(text);
        CitationLog citing(book);
        const EndPanel panel{page, sheet, book, options.units, citing};
        panel.title();
        page.close();
        text += "<div class=\"draw\">";
        append_drawing(text, sheet.kind.declaration, sheet.allowance,
                       sheet.rope.counting_diameter(), book.names(), options.units);
        text += "</div>\n";
        if (sheet.kind.declaration.reach != Reach::both_ends) {
            append_bearing_sketch(text, sheet.kind.declaration, sheet.allowance);
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
