// A rope in the words of a shop: what it is made like and of, how thick, what colour.
#include "libsplice/sheet/words/rope_words.h"

#include <algorithm>

namespace libsplice {

namespace {

/// A word of the vocabulary as it is spoken: hyphens between two words go, `3-strand` keeps its
/// own.
std::string spoken(std::string_view word) {
    std::string text(word);
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        const bool after_digit = text[i - 1] >= '0' && text[i - 1] <= '9';
        if (text[i] == '-' && !after_digit && word != name_of(Construction::core_dependent)) {
            text[i] = ' ';
        }
    }
    return text;
}

} // namespace

std::string make_of_rope(const Rope& rope) {
    if (rope.construction == Construction::shock_cord) {
        return spoken(name_of(rope.construction));
    }
    if (rope.construction == Construction::wire) {
        return spoken(name_of(rope.fibre)) + " wire";
    }
    return spoken(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre));
}

std::string size_of_rope(const Rope& rope, UnitSystem units) {
    if (rope.imperial) {
        return show_length(rope.diameter, UnitSystem::imperial);
    }
    return units == UnitSystem::metric ? show_number(rope.diameter.si() * 1000.0, 1) + " mm"
                                       : show_fine(rope.diameter, units);
}

std::string rope_in_words(const Rope& rope, std::string_view colour, UnitSystem units) {
    std::string text = make_of_rope(rope) + ", " + size_of_rope(rope, units);
    const std::string_view shown = colour.empty() ? std::string_view(rope.colour) : colour;
    if (!shown.empty()) {
        text += ", ";
        text += shown;
    }
    return text;
}

} // namespace libsplice
