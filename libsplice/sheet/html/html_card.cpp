// A bench card as blocks of HTML, each with the height that it has on paper.
#include "libsplice/sheet/html/html_card.h"

#include "libsplice/sheet/html/card_pages.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/html/text_width.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <iterator>

namespace libsplice {

namespace {

// The sizes of the style sheet, on paper: millimetres and points.
constexpr double width_of_page = 190.0;
constexpr double width_of_column = 92.0;
constexpr TypeSize of_text{10.0};
constexpr TypeSize of_numbers{14.0};
constexpr TypeSize of_steps{12.0};
constexpr TypeSize of_small{9.0};
constexpr double line_of_text = 4.06;
constexpr double line_of_numbers = 5.0;
constexpr double line_of_steps = 4.87;
constexpr double line_of_small = 3.49;
// Measured in Chromium, in print: what lies round the lines of text.
constexpr double round_paragraph = 1.0;
constexpr double round_step = 0.6;
constexpr double round_row = 0.6;
constexpr double bar_and_gap = 3.2; ///< at the left of a caution
constexpr double gap_of_blocks = 1.5;
constexpr double round_header = 1.2;
constexpr double height_of_cut = 10.8;
constexpr double height_of_sizes = 17.4; ///< cut length, and the pull to mark at

/// A paragraph in a column that opens with a word in bold, or with none.
CardBlock paragraph_block(std::string_view css, std::string_view word, std::string_view text) {
    const std::string bold = word.empty() ? "" : "<strong>" + std::string(word) + "</strong> ";
    const std::string shown = std::string(word) + ' ' + std::string(text);
    return {"<p class=\"" + std::string(css) + "\">" + bold + html_text(text) + "</p>\n",
            round_paragraph +
                line_of_text * lines_of(shown, width_of_column - bar_and_gap, of_text)};
}

CardBlock caution_block(const std::string& caution) {
    return paragraph_block("caution", "Caution", caution);
}

CardBlock fact_block(const CardFact& fact) {
    constexpr double width_of_label = 21.0;
    constexpr double gap = 2.0;
    const double lines =
        std::max(lines_of(fact.label, width_of_label, of_text),
                 lines_of(fact.text, width_of_column - width_of_label - gap, of_text));
    return {"<dl class=\"how\"><dt>" + html_text(fact.label) + "</dt><dd>" + html_text(fact.text) +
                "</dd></dl>\n",
            0.3 + line_of_text * lines};
}

std::vector<double> heights_of(std::span<const CardBlock> blocks) {
    std::vector<double> heights;
    std::ranges::transform(blocks, std::back_inserter(heights), &CardBlock::height);
    return heights;
}

/// What must be known before the work, in two even columns. The first fact is in the head.
CardBlock facts_block(const Card& card) {
    std::vector<CardBlock> blocks;
    for (const CardFact& fact : std::span(card.how).subspan(1)) {
        blocks.push_back(fact_block(fact));
    }
    for (const std::string& caution : card.cautions) {
        blocks.push_back(caution_block(caution));
    }
    if (card.more_cautions != 0) {
        const std::string text = std::to_string(card.more_cautions) + " more on the last page";
        blocks.push_back(paragraph_block("more", {}, text));
    }
    const std::vector<double> heights = heights_of(blocks);
    const std::size_t left = even_columns(heights);
    return {columns_html(blocks, left),
            gap_of_blocks + height_of_columns(heights, {left, blocks.size() - left})};
}

std::string head_cell(std::string_view words, std::string_view css) {
    return "<th scope=\"col\" class=\"" + std::string(css) + "\">" + std::string(words) + "</th>";
}

/// The columns of a table of marks.
struct MarkColumns {
    bool last = false; ///< of the end made last, whose marks are also counted from the first end

    static constexpr double number = 7.0;
    static constexpr double from_end = 21.0;
    static constexpr double gap = 17.0;
    static constexpr double padding = 1.5;

    [[nodiscard]] double name() const {
        return width_of_column - number - gap - from_end * (last ? 2.0 : 1.0);
    }
};

double height_of_row(const CardMark& mark, const MarkColumns& columns) {
    const auto numbers = [](std::string_view text, double width) {
        return lines_of(text, width - MarkColumns::padding, of_numbers);
    };
    const double lines = std::max({numbers(mark.from_cut_end, MarkColumns::from_end),
                                   numbers(mark.from_before, MarkColumns::gap),
                                   numbers(mark.from_first, MarkColumns::from_end)});
    const double of_name =
        line_of_text * lines_of(mark.name, columns.name() - MarkColumns::padding, of_text);
    // The name's first line is on the numbers' base line.
    constexpr double lower = line_of_numbers - line_of_text;
    return round_row + std::max(line_of_numbers * lines, of_name + 0.5 * lower);
}

/// The head of the marks' table names the unit once.
CardBlock marks_table(const CardEnd& end, UnitSystem units) {
    const MarkColumns columns{!end.marks.empty() && !end.marks.front().from_first.empty()};
    constexpr double height_of_head = 4.6;
    CardBlock table{"<table class=\"marks\"><thead><tr>" + head_cell("no", "c-no") +
                        head_cell("mark, in " + std::string(tape_unit(units)), "name") +
                        head_cell("from cut end", "r") + head_cell("from last", "r gap") +
                        (columns.last ? head_cell("from first end", "r") : std::string()) +
                        "</tr></thead><tbody>",
                    height_of_head};
    for (const CardMark& mark : end.marks) {
        table.html += "<tr><th scope=\"row\">" + std::to_string(mark.number) + "</th><td>" +
                      html_text(mark.name) + "</td><td class=\"r n\">" +
                      html_text(mark.from_cut_end) + "</td><td class=\"r\">" +
                      html_text(mark.from_before) + "</td>";
        table.html +=
            columns.last ? "<td class=\"r n\">" + html_text(mark.from_first) + "</td>" : "";
        table.html += "</tr>";
        table.height += height_of_row(mark, columns);
    }
    table.html += "</tbody></table>\n";
    return table;
}

/// An end's name and picture, and its marks.
CardBlock end_block(const CardEnd& end, const std::string& picture, UnitSystem units) {
    constexpr double width_of_picture = 28.0;
    constexpr double height_of_picture = 9.8;
    constexpr double gap = 2.0;
    constexpr double line_of_title = 4.66;
    constexpr TypeSize of_title{11.0, true};
    const double beside = width_of_column - (picture.empty() ? 0.0 : width_of_picture + gap);
    double height = line_of_title * lines_of(end.title, beside, of_title);
    if (!picture.empty()) {
        height =
            std::max(height + line_of_small * lines_of("the dot: " + end.datum, beside, of_small),
                     height_of_picture);
    }
    CardBlock block{"<section><div class=\"end\"><h3>" + html_text(end.title) + "</h3>" + picture +
                        "</div>",
                    gap_of_blocks + height};
    if (!end.marks.empty()) {
        const CardBlock table = marks_table(end, units);
        block.html += table.html;
        block.height += table.height;
    }
    block.html += "</section>\n";
    return block;
}

void add_ends(std::vector<CardBlock>& blocks, const Card& card, const CardPictures& pictures,
              UnitSystem units) {
    for (std::size_t i = 0; i < card.ends.size(); ++i) {
        const CardEnd& end = card.ends[i];
        blocks.push_back(
            end_block(end, i < pictures.ends.size() ? pictures.ends[i] : std::string(), units));
        if (!end.bury.empty()) {
            blocks.push_back(paragraph_block("go", "Bury", end.bury));
        }
        for (const std::string& caution : end.cautions) {
            blocks.push_back(caution_block(caution));
        }
    }
    if (card.ends.size() == 2 && !card.ends[0].marks.empty() && !card.ends[1].marks.empty()) {
        blocks.push_back(paragraph_block("between", {}, "Between the marks, " + card.between));
    }
}

/// The numbers of the marks that a step names: `[3, 5]`.
std::string marks_in_brackets(const CardStep& step) {
    const std::string marks = marks_named(step);
    return marks.empty() ? std::string() : '[' + marks.substr(marks.find(' ') + 1) + ']';
}

void add_steps(std::vector<CardBlock>& blocks, std::span<const CardStep> steps) {
    constexpr double beside_box = width_of_column - 13.7;
    std::size_t number = 0;
    for (const CardStep& step : steps) {
        ++number;
        const std::string marks = marks_in_brackets(step);
        blocks.push_back(
            {"<li><span class=\"tick\"></span><b>" + std::to_string(number) +
                 (step.end ? std::string(letter_of(*step.end)) : std::string()) + "</b><div>" +
                 html_text(step.text) +
                 (marks.empty() ? std::string()
                                : " <span class=\"at\">" + html_text(marks) + "</span>") +
                 "</div></li>\n",
             round_step + line_of_steps * lines_of(step.text + (marks.empty() ? "" : " ") + marks,
                                                   beside_box, of_steps),
             number});
    }
}

/// Boxes to write in, a row for each of some pieces.
CardBlock boxes_table(std::span<const std::string> boxes, std::span<const std::string> pieces,
                      bool ticked) {
    constexpr double width_of_made = 27.0;
    constexpr double row = 7.0;
    constexpr double padding = 1.5;
    std::string head = "<table class=\"boxes\"><thead><tr><th scope=\"col\">made</th>";
    double lines = 1.0;
    const double width = (width_of_column - width_of_made) / static_cast<double>(boxes.size());
    for (const std::string& box : boxes) {
        head += "<th scope=\"col\">" + html_text(box) + "</th>";
        lines = std::max(lines, lines_of(box, width - padding, of_small));
    }
    std::string rows;
    double height = 0.0;
    for (const std::string& piece : pieces) {
        rows += "<tr><th scope=\"row\">" +
                std::string(ticked ? "<span class=\"tick\"></span>" : "") + html_text(piece) +
                "</th>";
        for (std::size_t box = 0; box < boxes.size(); ++box) {
            rows += "<td></td>";
        }
        rows += "</tr>";
        height += std::max(row, line_of_text * lines_of(piece, width_of_made - 7.5, of_text) + 0.5);
    }
    return {head + "</tr></thead><tbody>" + rows + "</tbody></table>\n",
            gap_of_blocks + 0.6 + line_of_small * lines + height};
}

/// A row to tick and write in for each piece; many boxes are two tables, one under the other.
void add_boxes(std::vector<CardBlock>& blocks, const Card& card) {
    constexpr std::size_t most_rows = 24; // more are ticked on the boats' own lists
    constexpr std::size_t rows_together = 8;
    constexpr std::size_t boxes_abreast = 4;
    std::vector<std::string> pieces;
    for (const BoatCount& boat : card.pieces) {
        for (std::int64_t i = 0; i < boat.quantity && pieces.size() < most_rows; ++i) {
            pieces.push_back(boat.boat.empty() ? std::to_string(pieces.size() + 1) : boat.boat);
        }
    }
    const std::span<const std::string> boxes(card.boxes);
    const std::size_t tables = (boxes.size() + boxes_abreast - 1) / boxes_abreast;
    for (std::size_t from = 0; from < pieces.size(); from += rows_together) {
        const auto some = std::span<const std::string>(pieces).subspan(
            from, std::min(rows_together, pieces.size() - from));
        for (std::size_t table = 0; table < tables; ++table) {
            const std::size_t first = boxes.size() * table / tables;
            blocks.push_back(
                boxes_table(boxes.subspan(first, boxes.size() * (table + 1) / tables - first), some,
                            table == 0));
        }
    }
    if (const auto shown = static_cast<std::int64_t>(pieces.size()); shown < card.count) {
        const std::string text = "and " + std::to_string(card.count - shown) + " more pieces";
        blocks.push_back(paragraph_block("more", {}, text));
    }
}

std::string count_and_boats(const Card& card) {
    return "make " + std::to_string(card.count) + (card.boats.empty() ? "" : ": " + card.boats);
}

/// Number, name and what is under it, beside a column of sizes or a picture.
CardBlock header_block(std::string_view number, std::string_view name,
                       std::span<const std::string> under, std::string_view right,
                       double width_of_right, double height_of_right) {
    constexpr TypeSize of_name{18.0, true};
    constexpr double line_of_name = 6.99;
    constexpr double line_of_under = 4.87;
    constexpr double number_and_gaps = 17.0;
    const double room = width_of_page - number_and_gaps - width_of_right;
    CardBlock block{"<header><p class=\"no\">" + std::string(number) +
                        "</p><div class=\"who\"><h2>" + html_text(name) + "</h2>",
                    line_of_name * lines_of(name, room, of_name)};
    for (const std::string& text : under) {
        block.html += "<p>" + html_text(text) + "</p>";
        block.height += line_of_under * lines_of(text, room, of_steps);
    }
    block.html += "</div>" + std::string(right) + "</header>\n";
    block.height = std::max(block.height, height_of_right) + round_header;
    return block;
}

std::string cut_html(const Card& card) {
    return "<p class=\"cut\">cut <strong>" + html_text(card.cut) + "</strong></p>";
}

double width_of_cut(const Card& card) {
    constexpr TypeSize of_cut{32.0, true};
    constexpr double least = 66.0;
    constexpr double word = 9.0;
    return std::max(least, word + text_width(card.cut, of_cut));
}

} // namespace

CardBlock head_of_card(const Card& card, const CardPictures& pictures, std::size_t number) {
    const std::array under{count_and_boats(card), card.rope};
    if (!card.error.empty()) {
        constexpr double least = 66.0;
        CardBlock head = header_block(std::to_string(number), card.name, under,
                                      "<div class=\"sizes\"><p class=\"cut\">not cut</p></div>",
                                      least, height_of_cut);
        head.html += "<p class=\"why\">" + html_text(card.error) + "</p>\n";
        head.height += 2.0 + line_of_text * lines_of(card.error, width_of_page, of_text);
        return head;
    }
    const CardFact& pull = card.how.front();
    CardBlock head = header_block(std::to_string(number), card.name, under,
                                  "<div class=\"sizes\">" + cut_html(card) + "<p class=\"pull\">" +
                                      html_text(pull.label) + " <strong>" + html_text(pull.text) +
                                      "</strong></p></div>",
                                  width_of_cut(card), height_of_sizes);
    const CardBlock facts = facts_block(card);
    head.html += facts.html;
    head.height += facts.height;
    if (!pictures.bar.empty()) {
        head.html += "<div class=\"draw\">" + pictures.bar + "</div>\n";
        head.height += gap_of_blocks + pictures.bar_shape * width_of_page;
    }
    if (!pictures.strips.empty()) {
        head.html += "<div class=\"strips\">" + pictures.strips + "</div>\n";
        head.height += gap_of_blocks + pictures.strips_height;
    }
    return head;
}

CardBlock short_head_of_card(const Card& card, std::size_t number) {
    CardBlock head = header_block(std::to_string(number), card.name + ", continued", {},
                                  "<div class=\"sizes\">" + cut_html(card) + "</div>",
                                  width_of_cut(card), height_of_cut);
    return head;
}

std::vector<CardBlock> blocks_of(const Card& card, const CardPictures& pictures, UnitSystem units) {
    std::vector<CardBlock> blocks;
    if (!card.error.empty()) {
        return blocks;
    }
    add_ends(blocks, card, pictures, units);
    add_steps(blocks, card.steps);
    add_boxes(blocks, card);
    return blocks;
}

CardBlock head_of_method(const Method& method, const std::string& picture) {
    constexpr double width_of_picture = 45.0;
    constexpr double height_of_picture = 17.0;
    const std::string datum = "the dot: " + std::string(method.made_by->declaration.datum);
    const double with_words =
        height_of_picture + line_of_small * lines_of(datum, width_of_picture, of_small);
    std::string cards;
    for (const std::size_t card : method.cards) {
        cards += (cards.empty() ? "" : ", ") + std::to_string(card);
    }
    const std::array under{method.title + ". For cards " + cards + '.',
                           std::string("What is in brackets is on the card.")};
    return header_block(method.id, method.kind, under, picture, width_of_picture, with_words);
}

std::vector<CardBlock> blocks_of(const Method& method) {
    std::vector<CardBlock> blocks;
    add_steps(blocks, method.steps);
    return blocks;
}

std::string columns_html(std::span<const CardBlock> blocks, std::size_t left) {
    std::string html = "<div class=\"two\">";
    for (const std::span<const CardBlock> column : {blocks.first(left), blocks.subspan(left)}) {
        html += "<div>";
        bool in_steps = false;
        for (const CardBlock& block : column) {
            const bool is_step = block.step_number != 0;
            if (is_step && !in_steps) {
                html += "<ol class=\"steps\" start=\"" + std::to_string(block.step_number) + "\">";
            } else if (!is_step && in_steps) {
                html += "</ol>\n";
            }
            in_steps = is_step;
            html += block.html;
        }
        html += in_steps ? "</ol></div>" : "</div>";
    }
    return html + "</div>\n";
}

} // namespace libsplice
