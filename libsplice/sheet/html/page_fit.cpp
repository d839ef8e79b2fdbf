#include "libsplice/sheet/html/page_fit.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace libsplice {

namespace {

// Millimetres on paper; those of text at its full size.
constexpr double height_of_page = 260.0; ///< of Letter, which is the shorter
constexpr double text_line = 4.06;
constexpr double row_of_marks = 4.95;   ///< its numbers are never set smaller
constexpr double tick_box = 6.5;        ///< of a step, likewise
constexpr double sketch = 10.5;         ///< likewise
constexpr double box_to_write_in = 8.5; ///< likewise
constexpr double heading_of_end = 9.0;
constexpr double around = 72.0; ///< title, facts, strength
constexpr double width_of_drawing = 153.0;
constexpr double letters_to_a_line = 42.0; ///< of a column, at full size

double lines_of(std::string_view text, double size) {
    return 1.0 + std::floor(static_cast<double>(text.size()) * size / letters_to_a_line);
}

/// An end's column of marks, and its column of work at a size of the text.
struct EndOnPage {
    const Piece& piece;
    LineEnd end;

    [[nodiscard]] const End& allowance() const { return *piece.line->end(end).allowance; }
    [[nodiscard]] double marks() const {
        return row_of_marks * static_cast<double>(allowance().marks.size() + 1);
    }
    [[nodiscard]] double work(double size) const {
        // Bury, check or trimming; room for what is measured.
        double height = 8.0 * text_line * size + (allowance().made ? 2.0 : 1.0) * box_to_write_in;
        for (const Step& step : allowance().steps) {
            height += std::max(tick_box, size * text_line * lines_of(step.text, size));
        }
        for (const PieceCaution& caution : piece.cautions) {
            if (caution.end == end) {
                height += size * text_line * (1.5 + lines_of(caution.caution.text, size));
            }
        }
        return height;
    }
};

double of_the_line(const Piece& piece) {
    constexpr double rules_for_a_person = 8.0;
    double lines = piece.line->person.carries ? rules_for_a_person : 0.0;
    for (const PieceCaution& caution : piece.cautions) {
        lines += caution.end ? 0.0 : 2.2 + 0.5 * lines_of(caution.caution.text, 1.0);
    }
    return text_line * lines;
}

/// The largest size at which the height is no more than a page, and the height there.
struct Largest {
    double size = 1.0;
    double height = 0.0;
};
template <class HeightAt>
Largest largest_size(const HeightAt& height_at) {
    constexpr double smallest = 0.46;
    constexpr double step = 0.02;
    Largest largest{1.0, height_at(1.0)};
    while (largest.size > smallest && largest.height > height_of_page) {
        largest.size -= step;
        largest.height = height_at(largest.size);
    }
    return largest;
}

} // namespace

PageFit fit_on_page(const Piece& piece, double shape_of_drawing) {
    if (piece.fault != nullptr) {
        return {};
    }
    const std::array ends{EndOnPage{piece, LineEnd::a}, EndOnPage{piece, LineEnd::b}};
    const double shrinks = around + of_the_line(piece);
    const double stays = shape_of_drawing * width_of_drawing + box_to_write_in;
    const Largest in_turn = largest_size([&](double size) {
        double height = size * shrinks + stays;
        for (const EndOnPage& end : ends) {
            height +=
                std::max(size * heading_of_end, sketch) + std::max(end.marks(), end.work(size));
        }
        return height;
    });
    const Largest abreast = largest_size([&](double size) {
        double highest = 0.0;
        for (const EndOnPage& end : ends) {
            highest = std::max(highest, end.marks() + end.work(size));
        }
        return size * shrinks + stays + std::max(size * heading_of_end, sketch) + highest;
    });
    const bool neither_fits = in_turn.height > height_of_page && abreast.height > height_of_page;
    // Marks beside their steps are the easier to follow, as long as the text stays large.
    constexpr double large = 0.8;
    const bool side_by_side = neither_fits ? abreast.height < in_turn.height
                                           : in_turn.size < large && abreast.size > in_turn.size;
    return side_by_side ? PageFit{abreast.size, true} : PageFit{in_turn.size, false};
}

} // namespace libsplice
