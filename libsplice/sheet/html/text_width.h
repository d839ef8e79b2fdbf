// How wide a text is on paper, and how many lines it takes: what a card's height is reckoned with.
#pragma once

#include <string_view>

namespace libsplice {

/// How a text is set, in the sans-serif face of the style sheet.
struct TypeSize {
    double points = 10.0;
    bool bold = false;
};

/// Millimetres that a text takes on one line.
[[nodiscard]] double text_width(std::string_view text, TypeSize size);

/// How many lines a text takes in a column `room` millimetres wide, at least one. A line is broken
/// between words, and within a word that is wider than the column.
[[nodiscard]] double lines_of(std::string_view text, double room, TypeSize size);

} // namespace libsplice
