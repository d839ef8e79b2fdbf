// A page for a browser: what belongs together is put into one list or table.
#include "libsplice/sheet/html/html_page.h"

#include "libsplice/sheet/drawing/span_look.h"
#include "libsplice/sheet/html/html_style.h"
#include "libsplice/sheet/html/html_text.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

/// Facts that must not be overlooked, by their labels.
constexpr std::array<std::string_view, 4> urgent{"CAUTION", "THREAD NOW", "CHECK", "TRIM"};

std::string in_sentence_case(std::string_view label) {
    std::string word(label);
    const bool shouts = std::ranges::none_of(word, [](char c) { return c >= 'a' && c <= 'z'; });
    for (std::size_t i = 1; shouts && i < word.size(); ++i) {
        if (word[i] >= 'A' && word[i] <= 'Z') {
            word[i] = static_cast<char>(word[i] - 'A' + 'a');
        }
    }
    return word;
}

} // namespace

void HtmlPage::open(Open what) {
    if (open_ == what) {
        return;
    }
    close();
    open_ = what;
    if (what == Open::facts) {
        into_ += "<dl>\n";
    } else if (what == Open::steps) {
        into_ += "<ol class=\"steps\">\n";
    } else if (what == Open::table) {
        into_ += "<table>\n";
    }
}

void HtmlPage::close() {
    if (open_ == Open::facts) {
        into_ += "</dl>\n";
    } else if (open_ == Open::steps) {
        into_ += "</ol>\n";
    } else if (open_ == Open::table) {
        into_ += "</tbody></table>\n";
    }
    open_ = Open::nothing;
}

void HtmlPage::paragraph(std::string_view text, std::size_t /*indent*/, std::size_t /*hanging*/) {
    close();
    into_ += "<p>" + html_text(text) + "</p>\n";
}

void HtmlPage::title(std::string_view text) {
    close();
    into_ += "<h2>" + html_text(text) + "</h2>\n";
}

void HtmlPage::section(std::string_view text) {
    close();
    into_ += "<h3>" + html_text(in_sentence_case(text)) + "</h3>\n";
}

void HtmlPage::end_heading(std::string_view text) {
    close();
    into_ += "<h3>" + html_text(text) + "</h3>\n";
}

void HtmlPage::fact(std::string_view label, std::string_view text) {
    if (text.empty()) {
        return;
    }
    if (std::ranges::count(urgent, label) != 0) {
        close();
        into_ += "<p class=\"urgent\"><strong>" + html_text(in_sentence_case(label)) +
                 "</strong> " + html_text(text) + "</p>\n";
        return;
    }
    open(Open::facts);
    into_ += "<div><dt>" + html_text(label) + "</dt><dd>" + html_text(text) + "</dd></div>\n";
}

void HtmlPage::write_in(std::initializer_list<std::string_view> labels) {
    close();
    into_ += "<p class=\"write-in\">";
    for (const std::string_view label : labels) {
        into_ += "<span>" + html_text(label) + " <span class=\"box\"></span></span> ";
    }
    into_ += "</p>\n";
}

void HtmlPage::large(std::string_view label, std::string_view text) {
    close();
    into_ += "<p class=\"large\">" + html_text(in_sentence_case(label)) + " <strong>" +
             html_text(text) + "</strong></p>\n";
}

void HtmlPage::head(std::span<const PageColumn> columns, std::span<const std::string> cells) {
    close();
    open(Open::table);
    columns_ = columns.size();
    into_ += "<thead><tr>";
    for (std::size_t i = 0; i < cells.size(); ++i) {
        into_ += std::string("<th scope=\"col\"") + (columns[i].right ? " class=\"r\">" : ">") +
                 html_text(cells[i]) + "</th>";
    }
    into_ += "</tr></thead><tbody>\n";
}

void HtmlPage::row(std::span<const PageColumn> columns, std::span<const std::string> cells) {
    if (open_ != Open::table) {
        open(Open::table);
        columns_ = columns.size();
        into_ += "<tbody>\n";
    }
    into_ += "<tr>";
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string class_of = columns[i].right ? " class=\"r\">" : ">";
        into_ += i == 0 ? "<th scope=\"row\"" + class_of + html_text(cells[i]) + "</th>"
                        : "<td" + class_of + html_text(cells[i]) + "</td>";
    }
    into_ += "</tr>\n";
}

void HtmlPage::row_note(std::string_view text, std::size_t /*indent*/, std::size_t /*hanging*/) {
    if (open_ != Open::table) {
        paragraph(text, 0);
        return;
    }
    into_ += "<tr class=\"note\"><td colspan=\"" + std::to_string(columns_) + "\">" +
             html_text(text) + "</td></tr>\n";
}

void HtmlPage::step(std::size_t /*number*/, std::string_view text) {
    open(Open::steps);
    into_ += "<li><span class=\"tick\"></span>" + html_text(text) + "</li>\n";
}

std::string html_start(std::string_view title, std::string_view style) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" +
           html_text(title) + "</title>\n<style>\n" + std::string(html_style) + std::string(style) +
           "</style>\n</head>\n<body>\n" + std::string(drawing_patterns()) + "\n<main>\n<h1>" +
           html_text(title) + "</h1>\n";
}

std::string_view html_finish() {
    return "</main>\n</body>\n</html>\n";
}

} // namespace libsplice
