// A plan of reels and a rope's stretch as text.
#include "libsplice/sheet/panel/stretch_answer.h"
#include "libsplice/sheet/reel/reel_panel.h"
#include "libsplice/sheet/text/text_format.h"
#include "libsplice/sheet/text/text_page.h"

namespace libsplice {

void write_reel_as_text(const ReelSheet& sheet, Output& output, UnitSystem units) {
    TextPage page(output);
    page.title("REEL PLAN");
    write_reel_plan(page, sheet, units);
}

void write_stretch_as_text(const StretchAnswer& answer, Output& output, Credits credits,
                           const SheetOptions& options) {
    TextPage page(output);
    write_stretch_answer(page, answer, credits, options.units);
}

} // namespace libsplice
