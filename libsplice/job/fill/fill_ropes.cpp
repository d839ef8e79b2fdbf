// Finds the cell or the place of each line's rope in the text, and puts the rope there.
#include "libsplice/job/fill/fill_ropes.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace libsplice {

namespace {

/// A cell of the text, its quotes included.
struct CellSpan {
    std::size_t begin = 0;
    std::size_t end = 0;
};

/// A row of cells, and where its last one ends.
using CellSpans = std::vector<CellSpan>;

/// The separator of a CSV text, seen from its heading.
char separator_of(std::string_view text) {
    const std::string_view heading = text.substr(0, text.find('\n'));
    char best = ',';
    std::ptrdiff_t most = 0;
    for (const char separator : {',', ';', '\t'}) {
        const auto count = std::ranges::count(heading, separator);
        if (count > most) {
            most = count;
            best = separator;
        }
    }
    return best;
}

/// The rows of a CSV text; a quoted cell may hold separators, line ends and doubled quotes.
std::vector<CellSpans> rows_of(std::string_view text, char separator) {
    std::vector<CellSpans> rows;
    CellSpans row;
    CellSpan cell;
    bool quoted = false;
    const auto end_cell = [&](std::size_t at) {
        cell.end = at;
        row.push_back(cell);
        cell.begin = at + 1;
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '"') {
            quoted = !quoted;
        } else if (!quoted && c == separator) {
            end_cell(i);
        } else if (!quoted && c == '\n') {
            end_cell(i > cell.begin && text[i - 1] == '\r' ? i - 1 : i);
            rows.push_back(std::move(row));
            row.clear();
            cell.begin = i + 1;
        }
    }
    if (cell.begin < text.size()) {
        end_cell(text.size());
        rows.push_back(std::move(row));
    }
    return rows;
}

std::string_view inner(std::string_view text, CellSpan cell) {
    std::string_view inside = trimmed(text.substr(cell.begin, cell.end - cell.begin));
    if (inside.size() >= 2 && inside.front() == '"' && inside.back() == '"') {
        inside = trimmed(inside.substr(1, inside.size() - 2));
    }
    return inside;
}

bool is_blank(std::string_view text, const CellSpans& row) {
    return std::ranges::all_of(row, [&](CellSpan cell) { return inner(text, cell).empty(); });
}

std::string quoted_if_needed(const std::string& text, char separator) {
    if (text.find(separator) == std::string::npos && text.find('"') == std::string::npos) {
        return text;
    }
    std::string cell = "\"";
    for (const char c : text) {
        cell += c == '"' ? std::string("\"\"") : std::string(1, c);
    }
    return cell + '"';
}

/// Replaces spans of a text, in ascending order.
class Patch {
  public:
    explicit Patch(std::string_view text) : text_(text) {}
    void replace(CellSpan span, std::string_view with) {
        made_ += text_.substr(done_, span.begin - done_);
        made_ += with;
        done_ = span.end;
    }
    std::string finish() { return std::move(made_ += text_.substr(done_)); }

  private:
    std::string_view text_;
    std::string made_;
    std::size_t done_ = 0;
};

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// Whether a line of TOML begins a [[line]].
bool begins_a_line(std::string_view line) {
    std::string word;
    for (const char c : line.substr(0, line.find('#'))) {
        if (c != ' ' && c != '\t' && c != '\r') {
            word += c;
        }
    }
    return word == "[[line]]";
}

} // namespace

std::string fill_csv(std::string_view text, std::span<const std::string> ropes) {
    const char separator = separator_of(text);
    const std::vector<CellSpans> rows = rows_of(text, separator);
    Patch patch(text);
    std::optional<std::size_t> column;
    std::size_t line = 0;
    bool heading = true;
    for (const CellSpans& row : rows) {
        if (is_blank(text, row)) {
            continue;
        }
        const CellSpan end{row.back().end, row.back().end};
        if (heading) {
            heading = false;
            for (std::size_t i = 0; i < row.size(); ++i) {
                std::string_view name = inner(text, row[i]);
                if (name.starts_with(byte_order_mark)) {
                    name.remove_prefix(byte_order_mark.size());
                }
                if (in_small_letters(name) == "rope") {
                    column = i;
                }
            }
            if (!column) {
                patch.replace(end, std::string(1, separator) + "rope");
            }
            continue;
        }
        const std::string rope = line < ropes.size() ? ropes[line] : std::string();
        ++line;
        const std::string cell = quoted_if_needed(rope, separator);
        if (!column) {
            patch.replace(end, std::string(1, separator) + cell);
        } else if (*column < row.size()) {
            if (!rope.empty() && inner(text, row[*column]).empty()) {
                patch.replace(row[*column], cell);
            }
        } else if (!rope.empty()) {
            patch.replace(end, std::string(*column + 1 - row.size(), separator) + cell);
        }
    }
    return patch.finish();
}

Result<std::string> fill_toml(std::string_view text, std::span<const std::string> ropes) {
    std::string made;
    std::size_t line = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size() - 1) + 1;
        const std::string_view written = text.substr(at, end - at);
        made += written;
        at = end;
        if (!begins_a_line(written)) {
            continue;
        }
        if (line < ropes.size() && !ropes[line].empty()) {
            made += written.ends_with('\n') ? "" : "\n";
            made += "rope = \"" + ropes[line] + "\"\n";
        }
        ++line;
    }
    if (line != ropes.size()) {
        return Unexpected(Fault{Code::cannot_write,
                                "the ropes can only be filled in where each line of the job "
                                "begins with [[line]]"});
    }
    return made;
}

} // namespace libsplice
