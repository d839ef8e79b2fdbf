// The page docs/errors.md is built into the program, so that its words are written once.
#include "cli/list/error_page.h"

#include "libsplice/base/text.h"

#include <vector>

namespace libsplice::cli {

namespace {

/// Without the marks of code and links: `` `[a]` `` reads [a], and `[a](b)` reads a.
std::string plain(std::string_view text) {
    std::string out;
    bool in_code = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '`') {
            in_code = !in_code;
            continue;
        }
        if (text[i] == '[' && !in_code) {
            continue;
        }
        if (text[i] == ']' && !in_code) {
            const bool link = i + 1 < text.size() && text[i + 1] == '(';
            i = link ? std::min(text.find(')', i), text.size()) : i;
            continue;
        }
        out += text[i];
    }
    return out;
}

/// The cells of `| a | b |`; empty if the line is no row.
std::vector<std::string_view> cells_of(std::string_view line) {
    std::vector<std::string_view> cells;
    while (line.starts_with('|')) {
        line.remove_prefix(1);
        const auto end = line.find('|');
        if (end == std::string_view::npos) {
            break;
        }
        cells.push_back(trimmed(line.substr(0, end)));
        line.remove_prefix(end);
    }
    return cells;
}

} // namespace

std::optional<ErrorHelp> help_on(Code code) {
    const std::string number = std::to_string(static_cast<unsigned>(code));
    std::string_view page = text_of_error_page();
    while (!page.empty()) {
        const auto end = std::min(page.find('\n'), page.size());
        const auto cells = cells_of(page.substr(0, end));
        if (cells.size() == 4 && cells[0] == number) {
            return ErrorHelp{plain(cells[2]), plain(cells[3])};
        }
        page.remove_prefix(std::min(end + 1, page.size()));
    }
    return std::nullopt;
}

} // namespace libsplice::cli
