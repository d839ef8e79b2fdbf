// A page of plain text, 80 columns wide: lines break between words, never inside a quantity.
#include "libsplice/sheet/text/text_page.h"

#include "libsplice/base/text.h"
#include "libsplice/base/wrap.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <vector>

namespace libsplice {

namespace {

constexpr std::size_t indent_of_facts = 2;
constexpr std::size_t indent_of_table = 4;
constexpr std::size_t indent_of_large = 8;
constexpr std::size_t gap_of_columns = 2;
constexpr std::size_t width_of_label = 14;

std::string blanks(std::size_t count) {
    return std::string(count, ' ');
}

constexpr std::string_view no_break = "\u00a0";
constexpr std::array<std::string_view, 10> unit_words{"mm", "m",  "in",  "ft", "kg",
                                                      "lb", "kN", "lbf", "N",  "%"};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Whether the blank at `at` stands inside a quantity: before a unit, before a fraction, or between
/// feet and inches.
bool parts_quantity(std::string_view text, std::size_t at) {
    const std::string_view before = text.substr(0, at);
    const std::string_view after = text.substr(at + 1);
    const std::string_view word = after.substr(0, after.find_first_of(" .,;:)"));
    if (before.empty() || word.empty()) {
        return false;
    }
    const bool feet_before = before.ends_with(" ft");
    const bool number_before = is_digit(before.back());
    return is_digit(word.front()) ? number_before || feet_before
                                  : number_before && std::ranges::count(unit_words, word) != 0;
}

/// Text in lines of `width` characters, none of which parts a number from its unit.
std::string in_lines(std::string_view text, std::size_t width, std::size_t first_indent,
                     std::size_t rest_indent) {
    const std::string shown = show_controls(text);
    std::string kept_together;
    for (std::size_t i = 0; i < shown.size(); ++i) {
        if (shown[i] == ' ' && parts_quantity(shown, i)) {
            kept_together += no_break;
        } else {
            kept_together += shown[i];
        }
    }
    std::string lines = wrapped(kept_together, width, first_indent, rest_indent);
    for (auto at = lines.find(no_break); at != std::string::npos; at = lines.find(no_break, at)) {
        lines.replace(at, no_break.size(), " ");
    }
    return lines;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t start = 0;
    while (true) {
        const std::size_t end = text.find('\n', start);
        lines.push_back(text.substr(start, end - start));
        if (end == std::string::npos) {
            return lines;
        }
        start = end + 1;
    }
}

std::string padded(const std::string& text, const PageColumn& column) {
    const std::size_t used = std::min(column.width, display_width(text));
    const std::string space = blanks(column.width - used);
    return column.right ? space + text : text + space;
}

} // namespace

void TextPage::rule(char c) {
    output_.write(std::string(width, c));
    output_.write('\n');
}

void TextPage::paragraph(std::string_view text, std::size_t indent, std::size_t hanging) {
    output_.write(blanks(indent));
    output_.write(in_lines(text, width, indent, indent + hanging));
    output_.write('\n');
}

void TextPage::section(std::string_view text) {
    blank();
    paragraph(text, 2);
}

void TextPage::end_heading(std::string_view text) {
    blank();
    paragraph(text, 2, 2);
}

void TextPage::step(std::size_t number, std::string_view text) {
    if (number == 1) {
        blank();
    }
    paragraph(std::to_string(number) + ". " + std::string(text), 4, 3);
}

void TextPage::fact(std::string_view label, std::string_view text) {
    if (text.empty()) {
        return;
    }
    if (display_width(label) >= width_of_label) {
        paragraph(std::string(label) + ": " + std::string(text), indent_of_facts, 2);
        return;
    }
    const std::size_t indent = indent_of_facts + width_of_label;
    output_.write(blanks(indent_of_facts) + padded(std::string(label), {width_of_label}));
    output_.write(in_lines(text, width, indent, indent));
    output_.write('\n');
}

void TextPage::large(std::string_view label, std::string_view text) {
    const std::string line = std::string(label) + (text.empty() ? "" : "   ") + std::string(text);
    const std::size_t length = std::min(width - indent_of_large, display_width(line));
    blank();
    output_.write(blanks(indent_of_large) + line + '\n' + blanks(indent_of_large) +
                  std::string(length, '=') + '\n');
    blank();
}

void TextPage::row(std::span<const PageColumn> columns, std::span<const std::string> cells) {
    Expects(columns.size() == cells.size());
    std::vector<std::vector<std::string>> lines;
    std::size_t height = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        lines.push_back(lines_of(in_lines(cells[i], columns[i].width, 0, 0)));
        height = std::max(height, lines.back().size());
    }
    for (std::size_t y = 0; y < height; ++y) {
        std::string line = blanks(indent_of_table);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const bool has_text = y < lines[i].size();
            line += blanks(i == 0 ? 0 : gap_of_columns);
            line += padded(has_text ? lines[i][y] : std::string(), columns[i]);
        }
        line.resize(line.find_last_not_of(' ') + 1);
        output_.write(line);
        output_.write('\n');
    }
}

} // namespace libsplice
