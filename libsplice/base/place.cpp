// Writes a place as file:line:column.
#include "libsplice/base/place.h"

namespace libsplice {

std::string to_text(const Place& place) {
    std::string text = place.file;
    if (place.line == 0) {
        return text;
    }
    if (!text.empty()) {
        text += ':';
    }
    text += std::to_string(place.line);
    if (place.column != 0) {
        text += ':' + std::to_string(place.column);
    }
    return text;
}

} // namespace libsplice
