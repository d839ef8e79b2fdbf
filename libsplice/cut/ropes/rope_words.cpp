// A record is known by its id, and a described rope by its parts in one order.
#include "libsplice/cut/ropes/rope_words.h"

#include "libsplice/catalogue/vocabulary.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

std::string size_in_mm(const Rope& rope) {
    return show_number(rope.diameter.si() * 1000.0, 4) + " mm";
}

} // namespace

std::string one_name_of(const Rope& rope) {
    return rope.id == rope.title
               ? std::string(construction_names()[static_cast<std::size_t>(rope.construction)]) +
                     ' ' + std::string(fibre_names()[static_cast<std::size_t>(rope.fibre)]) + ' ' +
                     size_in_mm(rope)
               : rope.id;
}

std::string title_with_size(const Rope& rope, std::string_view colour) {
    std::string words = rope.title == rope.id ? one_name_of(rope) : rope.title;
    if (const std::string size = size_in_mm(rope); words.find(size) == std::string::npos) {
        words += ", " + size;
    }
    const std::string_view known = colour.empty() ? std::string_view(rope.colour) : colour;
    return known.empty() ? words : words + ", " + std::string(known);
}

} // namespace libsplice
