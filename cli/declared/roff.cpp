// Text becomes requests of man(7), escaped so that nothing in it acts as one.
#include "cli/declared/roff.h"

namespace libsplice::cli {

std::string escaped(std::string_view text) {
    std::string out;
    bool at_start = true;
    for (const char c : text) {
        if (at_start && (c == '.' || c == '\'')) {
            out += "\\&";
        }
        at_start = c == '\n';
        switch (c) {
        case '\\':
            out += "\\e";
            break;
        case '-':
            out += "\\-";
            break;
        case '"':
            out += "\\(dq";
            break;
        default:
            out += c;
        }
    }
    return out;
}

ManPage::ManPage(std::string_view name, int section, std::string_view summary,
                 std::string_view date, std::string_view version) {
    std::string title(name);
    for (char& c : title) {
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    // The first line asks for tbl(1), which the tables of a page need.
    text_ = "'\\\" t\n.TH " + escaped(title) + ' ' + std::to_string(section) + ' ' +
            std::string(date) + " \"libsplice " + escaped(version) + "\"\n.SH NAME\n" +
            escaped(name) + " \\- " + escaped(summary) + '\n';
}

void ManPage::begin_paragraph() {
    if (!after_heading_) {
        text_ += ".PP\n";
    }
    after_heading_ = false;
}

void ManPage::raw(std::string_view requests) {
    text_ += requests;
    after_heading_ = false;
}

void ManPage::section(std::string_view heading) {
    text_ += ".SH " + escaped(heading) + '\n';
    after_heading_ = true;
}

void ManPage::subsection(std::string_view heading) {
    text_ += ".SS " + escaped(heading) + '\n';
    after_heading_ = true;
}

void ManPage::paragraph(std::string_view text) {
    begin_paragraph();
    text_ += escaped(text) + '\n';
}

void ManPage::item(std::string_view word, std::string_view argument, std::string_view meaning) {
    after_heading_ = false;
    text_ += ".TP\n\\fB" + escaped(word) + "\\fR";
    if (!argument.empty()) {
        text_ += " \\fI" + escaped(argument) + "\\fR";
    }
    text_ += '\n' + (meaning.empty() ? "\\&" : escaped(meaning)) + '\n';
}

void ManPage::literal(std::string_view text) {
    begin_paragraph();
    text_ += ".nf\n" + escaped(text);
    text_ += text.ends_with('\n') ? ".fi\n" : "\n.fi\n";
}

void ManPage::command(std::string_view name, std::string_view words) {
    begin_paragraph();
    text_ += "\\fB" + escaped(name) + "\\fR " + escaped(words) + '\n';
}

} // namespace libsplice::cli
