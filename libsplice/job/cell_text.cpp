// The checks of a cell's text.
#include "libsplice/job/cell_text.h"

#include "libsplice/base/text.h"

namespace libsplice {

std::optional<Fault> text_fault(std::string_view text) {
    if (text.size() > longest_cell) {
        return too_long_fault();
    }
    if (first_bad_utf8(text)) {
        return Fault{Code::not_utf8, "this cell is not UTF-8 text; save the file as UTF-8"};
    }
    if (text.find('\0') != std::string_view::npos) {
        return Fault{Code::not_utf8,
                     "this cell holds a zero byte, which is no text; save the file as UTF-8"};
    }
    return std::nullopt;
}

Fault too_long_fault() {
    return Fault{Code::cell_too_long, "this cell is longer than 64 KiB; shorten it, or look for a "
                                      "closing quote that is missing"};
}

} // namespace libsplice
