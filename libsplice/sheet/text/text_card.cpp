// A bench card as text.
#include "libsplice/sheet/text/text_card.h"

#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/words.h"

#include <array>

namespace libsplice {

namespace {

void write_marks(Page& page, const CardEnd& end, UnitSystem units) {
    constexpr std::array columns{PageColumn{3, true}, PageColumn{22}, PageColumn{12, true},
                                 PageColumn{12, true}, PageColumn{14, true}};
    if (end.marks.empty()) {
        return;
    }
    const bool last = !end.marks.front().from_first.empty();
    page.head(columns, std::array<std::string, 5>{"no", "mark, in " + std::string(tape_unit(units)),
                                                  "from the cut end", "from the last",
                                                  last ? "from the first end" : ""});
    for (const CardMark& mark : end.marks) {
        page.row(columns,
                 std::array<std::string, 5>{std::to_string(mark.number), mark.name,
                                            mark.from_cut_end, mark.from_before, mark.from_first});
    }
}

void write_end(Page& page, const CardEnd& end, UnitSystem units) {
    page.end_heading(end.title);
    write_marks(page, end, units);
    page.fact("Bury", end.bury);
    for (const std::string& caution : end.cautions) {
        page.fact("Caution", caution);
    }
}

void write_steps(Page& page, const Card& card) {
    std::size_t number = 0;
    for (const CardStep& step : card.steps) {
        const std::string end =
            step.end ? "End " + std::string(letter_of(*step.end)) + ": " : std::string();
        const std::string marks = marks_named(step);
        page.step(++number, end + step.text + (marks.empty() ? "" : " [" + marks + "]"));
    }
}

} // namespace

void write_card(Page& page, const Card& card, std::size_t number, UnitSystem units) {
    page.rule('-');
    page.title((number == 0 ? "" : std::to_string(number) + "  ") + card.name + ", make " +
               std::to_string(card.count) + (card.boats.empty() ? "" : ": " + card.boats));
    if (!card.error.empty()) {
        page.large("NOT CUT", "");
        page.fact("Rope", card.rope);
        page.fact("Why", card.error);
        return;
    }
    page.large("CUT", card.cut);
    page.fact("Rope", card.rope);
    for (const CardFact& fact : card.how) {
        page.fact(fact.label, fact.text);
    }
    for (const std::string& caution : card.cautions) {
        page.fact("Caution", caution);
    }
    if (card.more_cautions != 0) {
        page.fact("", "more cautions at the end: " + std::to_string(card.more_cautions));
    }
    for (const CardEnd& end : card.ends) {
        write_end(page, end, units);
    }
    page.blank();
    page.fact("Between the marks", card.between);
    write_steps(page, card);
    page.blank();
    for (const std::string& box : card.boxes) {
        page.write_in({box});
    }
}

} // namespace libsplice
