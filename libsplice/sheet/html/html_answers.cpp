// A plan of reels and a rope's stretch for a browser.
#include "libsplice/sheet/html/html_format.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/panel/stretch_answer.h"
#include "libsplice/sheet/reel/reel_panel.h"

namespace libsplice {

namespace {

/// A page of that title, with what `write` puts on it.
template <class Write>
void write_page(std::string_view title, Output& output, const Write& write) {
    std::string text = html_start(title);
    {
        HtmlPage page(text);
        write(page);
    }
    output.write(text);
    output.write(html_finish());
}

} // namespace

void write_reel_as_html(const ReelSheet& sheet, Output& output, UnitSystem units) {
    write_page("Reel plan", output, [&](Page& page) { write_reel_plan(page, sheet, units); });
}

void write_stretch_as_html(const StretchAnswer& answer, Output& output, Credits credits,
                           const SheetOptions& options) {
    write_page("Stretch", output,
               [&](Page& page) { write_stretch_answer(page, answer, credits, options.units); });
}

} // namespace libsplice
