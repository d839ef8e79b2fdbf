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

    void write(const JobChoice& choice) {
        for (const LineChoice& line : choice.lines) {
            write_line(line, choice.preference);
        }
        if (choice.asked_together) {
            write_together(choice);
        }
        page_.blank();
        write_care(page_);
    }

  private:
    void write_line(const LineChoice& line, Preference preference) {
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
        page_.fact("Not known", what_is_not_known(line, preference));
        page_.fact("The cheaper", what_cheaper_gives_up(line, units_));
        page_.fact("Out, by need", ropes_that_are_out(line));
        if (line.needs.carries_person) {
            page_.paragraph(no_rule_for_a_person, 0);
        }
    }

    void write_together(const JobChoice& choice) {
        page_.section("ALL LINES TOGETHER");
        if (!choice.together) {
            page_.paragraph("No rope that serves has a price, so no cost can be made small. A list "
                            "of ropes, a stock or rope_price gives prices.",
                            0);
            return;
        }
        const Together& together = *choice.together;
        const auto money = [](double value) {
            return show_number(value, 2);
        };
        const auto sorts = [](std::size_t count) {
            return std::to_string(count) + (count == 1 ? " sort of rope" : " sorts of rope");
        };
        page_.fact("Cost",
                   money(together.cost) + " for " + sorts(together.sorts) +
                       (together.proved ? "; proved: no choice of these ropes costs less"
                                        : "; no choice of these ropes costs less than " +
                                              money(together.bound) + ", a gap of " +
                                              show_number(100.0 * together.gap(), 2) + " %"));
        page_.fact("Line by line",
                   (together.line_by_line ? money(*together.line_by_line)
                                          : std::string("the stock has no place for a piece,")) +
                       " for " + sorts(together.sorts_line_by_line) + ", cut from its own reels");
        for (const FewerSorts& fewer : together.fewer) {
            std::string ropes;
            for (const std::string& rope : fewer.ropes) {
                ropes += (ropes.empty() ? "" : ", ") + rope;
            }
            page_.fact("With " + std::to_string(fewer.sorts), money(fewer.cost - together.cost) +
                                                                  " more, " + money(fewer.cost) +
                                                                  ": " + ropes);
        }
        for (const std::size_t line : together.left_out) {
            page_.fact("Left out", choice.lines[line].name + ": no rope with a price serves");
        }
    }

    void write_needs(const Needs& needs) {
        page_.fact("Place", needs.place);
        page_.fact("Usual", usual_in_words(needs) + " (" + to_text(needs.usual.source) + ')');
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
        std::string shown(shown_as_words.at(static_cast<std::size_t>(rope.shown_as)));
        shown += rope.made.empty() ? "" : ": " + rope.made;
        page_.row_note(verdict.fails
                           ? shown + "; fails " + verdict.fails->need + ": " + verdict.fails->text
                           : shown + "; meets every need",
                       4, 2);
    }

    Page& page_;
    UnitSystem units_;
};

} // namespace

void write_choice(Page& page, const JobChoice& choice, UnitSystem units) {
    ChoicePanel(page, units).write(choice);
}

void write_choice_as_text(const JobChoice& choice, Output& output, UnitSystem units) {
    TextPage page(output);
    page.title("CHOICE OF ROPE");
    write_choice(page, choice, units);
}

void write_choice_as_html(const JobChoice& choice, Output& output, UnitSystem units) {
    std::string text = html_start("Choice of rope");
    {
        HtmlPage page(text);
        write_choice(page, choice, units);
    }
    output.write(text);
    output.write(html_finish());
}

} // namespace libsplice
