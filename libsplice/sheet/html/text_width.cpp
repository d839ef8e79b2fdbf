// How wide a text is on paper, by the widths of its letters, and where its lines are broken.
#include "libsplice/sheet/html/text_width.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace libsplice {

namespace {

constexpr double millimetres_in_point = 25.4 / 72.0;
constexpr unsigned char first_letter = 0x20;
constexpr std::size_t letters = 95;

/// Of the letters from the blank to the tilde, in thousandths of the size: measured from the fonts
/// Liberation Sans and Liberation Sans Bold, which are as wide as Arial and Helvetica.
using Widths = std::array<int, letters>;
constexpr Widths regular{
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333,  278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,  611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278,  556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500,  500, 334, 260, 334, 584};
constexpr Widths bold{
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667,
    611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556,
    278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584};
constexpr int other_letter = 700; ///< an estimate for accented letters and signs
constexpr int wide_letter = 1000; ///< of East Asian writing

constexpr unsigned char continues = 0x80; ///< the top bits of a byte within a character
constexpr unsigned char top_bits = 0xC0;
constexpr unsigned char first_wide = 0xE3;

double thousandths(unsigned char byte, const Widths& of) {
    if (byte >= first_letter && byte < first_letter + letters) {
        return of.at(static_cast<std::size_t>(byte - first_letter));
    }
    if ((byte & top_bits) == continues) {
        return 0.0;
    }
    return byte >= first_wide ? wide_letter : other_letter;
}

} // namespace

double text_width(std::string_view text, TypeSize size) {
    const Widths& of = size.bold ? bold : regular;
    double sum = 0.0;
    for (const char letter : text) {
        sum += thousandths(static_cast<unsigned char>(letter), of);
    }
    return sum / 1000.0 * size.points * millimetres_in_point;
}

double lines_of(std::string_view text, double room, TypeSize size) {
    const double blank = text_width(" ", size);
    double lines = 1.0;
    double used = 0.0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const double word = text_width(text.substr(0, end), size);
        const double with_blank = used > 0.0 ? used + blank + word : word;
        if (with_blank <= room) {
            used = with_blank;
        } else {
            lines += used > 0.0 ? 1.0 : 0.0;
            const double broken = std::max(0.0, std::ceil(word / room) - 1.0);
            lines += broken;
            used = word - broken * room;
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

} // namespace libsplice
