// A section for each line: what it asks, a table of ropes, and the sentence about the cheaper one.
#include "libsplice/sheet/choice/choice_sheet.h"

#include <array>
#include <string>

namespace libsplice {

namespace {

constexpr std::array columns{PageColumn{34},       PageColumn{9, true}, PageColumn{7, true},
                             PageColumn{11, true}, PageColumn{9, true}, PageColumn{8, true}};

class ChoicePanel {
  public:
    ChoicePanel(Page& page, const ChoiceSheet& sheet, UnitSystem units)
        : page_(page), sheet_(sheet), units_(units) {}

    void write() {
        for (const LineChoice& line : sheet_.choice.lines) {
            write_line(line);
        }
        if (sheet_.choice.together) {
            write_together(*sheet_.choice.together);
        }
        page_.blank();
        page_.paragraph("Strengths are those that a source gives; what any rope of a sort holds at "
                        "least is never enough for a person. Follow the rope maker's own "
                        "instructions, and have what carries a person looked at by somebody who "
                        "is competent.",
                        0);
    }

  private:
    void write_line(const LineChoice& line) {
        page_.section(line.name + (line.boat.empty() ? "" : ", " + line.boat));
        if (line.fault) {
            page_.fact("Error", line.fault->text);
            return;
        }
        write_needs(line.needs);
        page_.head(columns, std::array<std::string, 6>{"rope", "gives", "factor", "to buy", "price",
                                                       "grams"});
        for (std::size_t i = 0; i < line.ropes.size(); ++i) {
            write_rope(line.ropes[i], line.chosen == i);
        }
        page_.fact("Chosen", line.chosen ? line.ropes[*line.chosen].rope->title
                                         : "none: no rope that is known meets every need");
        page_.fact("The cheaper", what_cheaper_gives_up(line, units_));
    }

    void write_needs(const Needs& needs) {
        page_.fact("Place", needs.place);
        for (std::size_t i = 0; i < need_columns.size(); ++i) {
            const std::string words = need_in_words(needs, i, units_);
            if (words.empty() || !needs.sources.at(i)) {
                continue;
            }
            page_.fact(column_name(need_columns.at(i)),
                       words + " (" + to_text(sheet_.citations.at(*needs.sources.at(i))) + ')');
        }
    }

    void write_rope(const TriedRope& rope, bool chosen) {
        const Verdict& verdict = rope.verdict;
        const auto number = [](std::optional<double> value, int places) {
            return value ? show_number(*value, places) : std::string("-");
        };
        page_.row(
            columns,
            std::array<std::string, 6>{
                (chosen ? "* " : "") + rope.rope->title,
                verdict.give ? show_length(*verdict.give, units_) : "-", number(verdict.factor, 1),
                verdict.buy ? show_length(*verdict.buy, units_) : "-", number(verdict.price, 2),
                number(verdict.mass_kg ? std::optional(*verdict.mass_kg * 1000.0) : std::nullopt,
                       0)});
        const std::string shown(shown_as_words.at(static_cast<std::size_t>(rope.shown_as)));
        page_.row_note(verdict.fails
                           ? shown + "; fails " + verdict.fails->need + ": " + verdict.fails->text
                           : shown + "; meets every need",
                       4, 2);
    }

    void write_together(const Together& together) {
        page_.section("ALL LINES TOGETHER");
        page_.fact("Cost", show_number(together.cost, 2));
        page_.fact("How good", together.proved ? "proved best among the ropes shown"
                                               : "no choice of these ropes can be under " +
                                                     show_number(together.bound, 2));
        page_.fact("Line by line", show_number(together.line_by_line, 2));
        page_.fact("Sorts of rope", std::to_string(together.sorts));
        for (std::size_t l = 0; l < together.chosen.size(); ++l) {
            const LineChoice& line = sheet_.choice.lines[l];
            if (together.chosen[l]) {
                page_.fact(line.name, line.ropes[*together.chosen[l]].rope->title);
            }
        }
    }

    Page& page_;
    const ChoiceSheet& sheet_;
    UnitSystem units_;
};

} // namespace

void write_choice(Page& page, const ChoiceSheet& sheet, UnitSystem units) {
    ChoicePanel(page, sheet, units).write();
}

} // namespace libsplice
