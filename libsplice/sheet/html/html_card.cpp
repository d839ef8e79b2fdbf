// A bench card as blocks of HTML, each with the height that it has on paper.
#include "libsplice/sheet/html/html_card.h"

#include "libsplice/base/text.h"
#include "libsplice/sheet/html/card_pages.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace libsplice {

namespace {

// Millimetres on paper; they follow the style sheet.
constexpr double line_of_steps = 5.1;
constexpr double line_of_facts = 4.4;
constexpr double row_of_marks = 6.0;
constexpr double head_of_marks = 8.2;
constexpr double row_of_boxes = 7.4;
constexpr double room_of_strip = 18.0;
constexpr double gap_of_blocks = 2.0;
constexpr double width_of_page = 190.0;
// Letters to a line.
constexpr double letters_of_step = 37.0;
constexpr double letters_of_fact = 34.0;
constexpr double letters_of_end = 46.0;
constexpr double letters_of_mark = 21.0;
constexpr double letters_beside_figure = 25.0;

double lines_of(std::string_view text, double letters) {
    return std::max(1.0, std::ceil(static_cast<double>(character_count(text)) / letters));
}

std::string cautions_html(const std::vector<std::string>& cautions) {
    std::string html;
    for (const std::string& caution : cautions) {
        html += "<p class=\"caution\"><strong>Caution</strong> " + html_text(caution) + "</p>";
    }
    return html;
}

double height_of_cautions(const std::vector<std::string>& cautions, double letters) {
    double height = 0.0;
    for (const std::string& caution : cautions) {
        height += 2.6 + line_of_facts * lines_of("Caution " + caution, letters);
    }
    return height;
}

CardBlock facts_block(const Card& card) {
    CardBlock block{"<dl class=\"how\">", gap_of_blocks};
    double lines = 0.0;
    for (std::size_t i = 0; i < card.how.size(); ++i) {
        const CardFact& fact = card.how[i];
        block.html += std::string(i == 0 ? "<div class=\"pull\">" : "<div>") + "<dt>" +
                      html_text(fact.label) + "</dt><dd>" + html_text(fact.text) + "</dd></div>";
        lines += i == 0 ? 1.6 : lines_of(fact.text, letters_of_fact);
    }
    block.html += "</dl>\n";
    block.height += 0.5 * line_of_facts * (lines + 1.5);
    if (!card.cautions.empty()) {
        block.html += "<div class=\"cautions\">" + cautions_html(card.cautions);
        if (card.more_cautions != 0) {
            block.html += "<p class=\"more\">" + std::to_string(card.more_cautions) +
                          " more on the last page</p>";
        }
        block.html += "</div>\n";
        block.height += height_of_cautions(card.cautions, 2.0 * letters_of_end);
    }
    return block;
}

/// The head of the marks' table names the unit once.
std::string marks_table(const CardEnd& end, UnitSystem units) {
    const bool last = !end.marks.empty() && !end.marks.front().from_first.empty();
    std::string html =
        "<table class=\"marks\"><thead><tr><th scope=\"col\">no</th><th scope=\"col\">mark, in " +
        std::string(tape_unit(units)) +
        "</th><th scope=\"col\" class=\"r\">from the cut end</th><th scope=\"col\" class=\"r\">"
        "from the last</th>";
    html += last ? "<th scope=\"col\" class=\"r\">from the first end</th>" : "";
    html += "</tr></thead><tbody>";
    for (const CardMark& mark : end.marks) {
        html += "<tr><th scope=\"row\">" + std::to_string(mark.number) + "</th><td>" +
                html_text(mark.name) + "</td><td class=\"r n\">" + html_text(mark.from_cut_end) +
                "</td><td class=\"r\">" + html_text(mark.from_before) + "</td>";
        html += last ? "<td class=\"r n\">" + html_text(mark.from_first) + "</td>" : "";
        html += "</tr>";
    }
    return html + "</tbody></table>";
}

CardBlock ends_block(const Card& card, const CardPictures& pictures, UnitSystem units) {
    CardBlock block{"<div class=\"ends\">", 0.0};
    for (std::size_t i = 0; i < card.ends.size(); ++i) {
        const CardEnd& end = card.ends[i];
        const std::string picture = i < pictures.ends.size() ? pictures.ends[i] : std::string();
        double height = 6.0 + (picture.empty() ? 0.0 : 14.0);
        block.html += "<section><h3>" + html_text(end.title) + "</h3>" + picture;
        if (!end.marks.empty()) {
            block.html += marks_table(end, units);
            height += head_of_marks;
            for (const CardMark& mark : end.marks) {
                height +=
                    std::max(row_of_marks, line_of_facts * lines_of(mark.name, letters_of_mark));
            }
        }
        if (!end.bury.empty()) {
            block.html += "<p class=\"go\"><strong>Bury</strong> " + html_text(end.bury) + "</p>";
            height += 1.0 + line_of_facts * lines_of(end.bury, letters_of_end);
        }
        block.html += cautions_html(end.cautions) + "</section>";
        height += height_of_cautions(end.cautions, letters_of_end);
        block.height = std::max(block.height, height);
    }
    block.html += "</div>\n";
    if (card.ends.size() == 2 && !card.ends[0].marks.empty() && !card.ends[1].marks.empty()) {
        block.html +=
            "<p class=\"between\">Between the marks, " + html_text(card.between) + "</p>\n";
        block.height += line_of_facts + 1.0;
    }
    block.height += gap_of_blocks;
    return block;
}

/// The numbers of the marks that a step names: `[3, 5]`.
std::string marks_in_brackets(const CardStep& step) {
    const std::string marks = marks_named(step);
    return marks.empty() ? std::string() : '[' + marks.substr(marks.find(' ') + 1) + ']';
}

/// How many lines a step's text takes, with a figure at its side if it has one.
double lines_of_step(std::string_view text, bool has_figure) {
    if (!has_figure) {
        return lines_of(text, letters_of_step);
    }
    constexpr double beside = 2.0; // lines that a figure is high
    const double all_beside = lines_of(text, letters_beside_figure);
    if (all_beside <= beside) {
        return beside + 0.2;
    }
    const auto past = static_cast<std::size_t>(beside * letters_beside_figure);
    return beside + lines_of(text.substr(std::min(text.size(), past)), letters_of_step);
}

/// Some steps, in two columns. `numbered_from` is the first one's number.
struct StepsOnPaper {
    std::span<const CardStep> steps;
    std::span<const std::string> pictures; ///< one for each step, or none at all
    std::size_t numbered_from = 1;

    [[nodiscard]] StepsOnPaper part(std::size_t from, std::size_t to) const {
        return {steps.subspan(from, to - from),
                pictures.empty() ? pictures : pictures.subspan(from, to - from),
                numbered_from + from};
    }
};

CardBlock steps_block(const StepsOnPaper& some) {
    CardBlock block{"<ol class=\"steps\" start=\"" + std::to_string(some.numbered_from) + "\">",
                    0.0};
    double height = 0.0;
    double highest = 0.0;
    for (std::size_t i = 0; i < some.steps.size(); ++i) {
        const CardStep& step = some.steps[i];
        const std::string picture = some.pictures.empty() ? std::string() : some.pictures[i];
        const std::string marks = marks_in_brackets(step);
        block.html += "<li><span class=\"tick\"></span><b>" +
                      std::to_string(some.numbered_from + i) +
                      (step.end ? std::string(letter_of(*step.end)) : std::string()) + "</b><div>" +
                      picture + html_text(step.text) +
                      (marks.empty() ? std::string()
                                     : " <span class=\"at\">" + html_text(marks) + "</span>") +
                      "</div></li>";
        const double of_step =
            0.6 + line_of_steps * lines_of_step(step.text + marks, !picture.empty());
        height += of_step;
        highest = std::max(highest, of_step);
    }
    block.html += "</ol>\n";
    // Two columns are as even as whole steps allow.
    block.height = 0.5 * (height + highest) + gap_of_blocks;
    return block;
}

/// The steps as one block; or, if they would fill most of a page, as several.
void add_steps(std::vector<CardBlock>& blocks, const StepsOnPaper& steps) {
    constexpr double most_together = 0.5 * height_of_page;
    if (steps.steps.empty()) {
        return;
    }
    CardBlock whole = steps_block(steps);
    const auto chunks = static_cast<std::size_t>(std::ceil(whole.height / most_together));
    if (chunks <= 1) {
        blocks.push_back(std::move(whole));
        return;
    }
    const std::size_t count = steps.steps.size();
    for (std::size_t i = 0; i < chunks; ++i) {
        blocks.push_back(steps_block(steps.part(count * i / chunks, count * (i + 1) / chunks)));
    }
}

/// A row to tick and write in for each piece.
CardBlock boxes_block(const Card& card) {
    std::string rows;
    std::size_t count = 0;
    constexpr std::size_t most_rows = 24; // more are ticked on the boats' own lists
    for (const BoatCount& boat : card.pieces) {
        for (std::int64_t i = 0; i < boat.quantity && count < most_rows; ++i) {
            ++count;
            rows += "<tr><th scope=\"row\"><span class=\"tick\"></span>" +
                    (boat.boat.empty() ? std::to_string(count) : html_text(boat.boat)) + "</th>";
            for (std::size_t box = 0; box < card.boxes.size(); ++box) {
                rows += "<td></td>";
            }
            rows += "</tr>";
        }
    }
    std::string head = "<table class=\"boxes\"><thead><tr><th scope=\"col\">made</th>";
    for (const std::string& box : card.boxes) {
        head += "<th scope=\"col\">" + html_text(box) + "</th>";
    }
    const bool more = static_cast<std::int64_t>(count) < card.count;
    return {head + "</tr></thead><tbody>" + rows + "</tbody></table>\n" +
                (more ? "<p class=\"more\">and " +
                            std::to_string(card.count - static_cast<std::int64_t>(count)) +
                            " more pieces</p>\n"
                      : std::string()),
            gap_of_blocks + 6.5 + row_of_boxes * static_cast<double>(count) + (more ? 5.0 : 0.0)};
}

std::string count_and_boats(const Card& card) {
    return "make " + std::to_string(card.count) + (card.boats.empty() ? "" : ": " + card.boats);
}

} // namespace

CardBlock head_of_card(const Card& card, std::size_t number) {
    std::string html = "<header><p class=\"no\">" + std::to_string(number) +
                       "</p><div class=\"who\"><h2>" + html_text(card.name) +
                       "</h2><p class=\"boats\">" + html_text(count_and_boats(card)) +
                       "</p><p class=\"of\">" + html_text(card.rope) + "</p></div>";
    if (!card.error.empty()) {
        return {html + "<p class=\"cut\">not cut</p></header>\n<p class=\"why\">" +
                    html_text(card.error) + "</p>\n",
                24.0 + line_of_facts * lines_of(card.error, 2.0 * letters_of_end)};
    }
    const double lines = lines_of(card.name, 30.0) + 0.75 * lines_of(count_and_boats(card), 50.0) +
                         0.75 * lines_of(card.rope, 50.0);
    return {html + "<p class=\"cut\">cut <strong>" + html_text(card.cut) +
                "</strong></p></header>\n",
            3.0 + 7.2 * lines};
}

CardBlock short_head_of_card(const Card& card, std::size_t number) {
    return {"<header class=\"next\"><p class=\"no\">" + std::to_string(number) +
                "</p><div class=\"who\"><h2>" + html_text(card.name) +
                ", continued</h2></div><p class=\"cut\">cut <strong>" + html_text(card.cut) +
                "</strong></p></header>\n",
            16.5};
}

std::vector<CardBlock> blocks_of(const Card& card, const CardPictures& pictures, UnitSystem units) {
    std::vector<CardBlock> blocks;
    if (!card.error.empty()) {
        return blocks;
    }
    blocks.push_back(facts_block(card));
    if (!pictures.bar.empty()) {
        blocks.push_back({"<div class=\"draw\">" + pictures.bar + "</div>\n",
                          gap_of_blocks + pictures.bar_shape * width_of_page});
    }
    blocks.push_back(ends_block(card, pictures, units));
    if (!pictures.strips.empty()) {
        blocks.push_back(
            {"<div class=\"strips\">" + pictures.strips + "</div>\n",
             gap_of_blocks + room_of_strip * static_cast<double>(pictures.strip_count)});
    }
    add_steps(blocks, {card.steps, pictures.steps});
    blocks.push_back(boxes_block(card));
    return blocks;
}

CardBlock head_of_method(const Method& method) {
    std::string cards;
    for (const std::size_t card : method.cards) {
        cards += (cards.empty() ? "" : ", ") + std::to_string(card);
    }
    const std::string uses = method.title + ". For cards " + cards + '.';
    return {"<header><p class=\"no\">" + method.id + "</p><div class=\"who\"><h2>" +
                html_text(method.kind) + "</h2><p class=\"of\">" + html_text(uses) +
                "</p></div></header>\n<p class=\"more\">What is in brackets is on the card: marks "
                "by their names, figures beside the step that refers here.</p>\n",
            16.0 + 5.2 * lines_of(uses, 75.0)};
}

std::vector<CardBlock> blocks_of(const Method& method, const CardPictures& pictures) {
    std::vector<CardBlock> blocks;
    if (!pictures.bar.empty()) {
        blocks.push_back({"<div class=\"finished\">" + pictures.bar + "</div>\n",
                          gap_of_blocks + pictures.bar_shape});
    }
    add_steps(blocks, {method.steps, pictures.steps});
    return blocks;
}

} // namespace libsplice
