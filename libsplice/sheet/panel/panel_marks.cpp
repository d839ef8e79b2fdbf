// The marks of an end, and which of them a step names.
#include "libsplice/sheet/panel/panel_marks.h"

#include "libsplice/cut/layout.h"
#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>
#include <array>

namespace libsplice {

// A piece's marks stand end by end.
std::span<const PieceMark> marks_of(const Piece& piece, LineEnd end) {
    const auto second = std::ranges::find(piece.marks, LineEnd::b, &PieceMark::end);
    return end == LineEnd::a ? std::span(piece.marks.begin(), second)
                             : std::span(second, piece.marks.end());
}

std::vector<PieceMark> marks_of(const End& allowance) {
    std::vector<PieceMark> marks;
    for (const Mark& mark : allowance.marks) {
        marks.push_back({LineEnd::a, mark.name, mark.from_tail_end, mark.number});
    }
    return marks;
}

std::vector<std::size_t> numbers_of(const Step& step, std::span<const PieceMark> marks) {
    std::vector<std::size_t> numbers;
    if (step.action == Action::mark && step.marks.empty()) {
        for (const PieceMark& mark : marks) {
            numbers.push_back(mark.number);
        }
    }
    for (const MarkName name : step.marks) {
        const auto mark = std::ranges::find(marks, name, &PieceMark::name);
        if (mark != marks.end()) {
            numbers.push_back(mark->number);
        }
    }
    return numbers;
}

void write_marks(Page& page, std::span<const PieceMark> marks, const Names& names,
                 UnitSystem units) {
    constexpr std::array columns{PageColumn{26}, PageColumn{20, true}, PageColumn{20, true}};
    page.head(columns,
              std::array<std::string, 3>{"mark", "from the cut end", "from the mark before"});
    Nanometres before = 0;
    for (const PieceMark& mark : marks) {
        page.row(columns, std::array<std::string, 3>{std::string(names.of(mark.name)),
                                                     show_length(mark.from_end, units),
                                                     show_length(mark.from_end - before, units)});
        before = mark.from_end;
    }
}

} // namespace libsplice
