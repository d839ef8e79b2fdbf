// A section for each line: what it asks, a table of ropes, and the sentence about the cheaper one.
#include "libsplice/sheet/choice/choice_sheet.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/text/text_page.h"

#include <array>
#include <string>

namespace libsplice {

namespace {

constexpr std::array columns{PageColumn{34},       PageColumn{9, true}, PageColumn{7, true},
                             PageColumn{11, true}, PageColumn{9, true}, PageColumn{8, true}};

/// Its title, with its diameter unless the title has it.
std::string title_of(const Rope& rope) {
    const std::string size = show_number(rope.diameter.si() * 1000.0, 2) + " mm";
    return rope.title.find(size) == std::string::npos ? rope.title + ", " + size : rope.title;
}

class ChoicePanel {
  public:
    ChoicePanel(Page& page, UnitSystem units) : page_(page), units_(units) {}

    void write(std::span<const LineChoice> lines) {
        for (const LineChoice& line : lines) {
            write_line(line);
        }
        page_.blank();
        write_care(page_);
    }

  private:
    void write_line(const LineChoice& line) {
        page_.section(line.name + (line.boat.empty() ? "" : ", " + line.boat));
        if (line.fault) {
            page_.fact("Error", line.fault->text);
            return;
        }
        write_needs(line.needs);
        if (!line.needs.load) {
            page_.fact("load", "not given, so strength is not looked at");
        }
        page_.head(columns, std::array<std::string, 6>{"rope", "gives", "factor", "to buy", "price",
                                                       "grams"});
        for (std::size_t i = 0; i < line.ropes.size(); ++i) {
            write_rope(line.ropes[i], line.chosen == i);
        }
        page_.fact("Chosen", line.chosen ? line.ropes[*line.chosen].rope->title
                                         : "none: no rope that is known meets every need");
        page_.fact("The cheaper", what_cheaper_gives_up(line, units_));
        if (line.needs.carries_person) {
            page_.paragraph(no_rule_for_a_person, 0);
        }
    }

    void write_needs(const Needs& needs) {
        page_.fact("Place", needs.place);
        for (std::size_t i = 0; i < need_columns.size(); ++i) {
            const std::string words = need_in_words(needs, i, units_);
            if (!words.empty()) {
                page_.fact(name_of_need(i), words + " (" + source_of_need(needs, i) + ')');
            }
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
                (chosen ? "* " : "") + title_of(*rope.rope),
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

    Page& page_;
    UnitSystem units_;
};

} // namespace

void write_choice(Page& page, std::span<const LineChoice> lines, UnitSystem units) {
    ChoicePanel(page, units).write(lines);
}

void write_choice_as_text(std::span<const LineChoice> lines, Output& output, UnitSystem units) {
    TextPage page(output);
    page.title("CHOICE OF ROPE");
    write_choice(page, lines, units);
}

void write_choice_as_html(std::span<const LineChoice> lines, Output& output, UnitSystem units) {
    std::string text = html_start("Choice of rope");
    {
        HtmlPage page(text);
        write_choice(page, lines, units);
    }
    output.write(text);
    output.write(html_finish());
}

} // namespace libsplice
