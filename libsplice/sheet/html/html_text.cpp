// Text in HTML: nothing that a browser would read as markup is left.
#include "libsplice/sheet/html/html_text.h"

#include "libsplice/base/text.h"

namespace libsplice {

std::string html_text(std::string_view text) {
    std::string escaped;
    for (const char c : show_controls(text)) {
        switch (c) {
        case '&':
            escaped += "&amp;";
            break;
        case '<':
            escaped += "&lt;";
            break;
        case '>':
            escaped += "&gt;";
            break;
        case '"':
            escaped += "&quot;";
            break;
        case '\'':
            escaped += "&#39;";
            break;
        default:
            escaped += c;
        }
    }
    return escaped;
}

} // namespace libsplice
