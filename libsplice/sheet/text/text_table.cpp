// A job as one table on a terminal.
#include "libsplice/sheet/text/text_table.h"

#include "libsplice/base/text.h"
#include "libsplice/base/wrap.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/rope_words.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace libsplice {

namespace {

struct TableColumn {
    std::string heading;
    bool right = false;
    std::size_t most = 40; ///< longer cells are wrapped
    std::size_t width = 0;
};

constexpr std::size_t columns_of_table = 8;
using TableRow = std::array<std::string, columns_of_table>;
constexpr std::size_t column_of_cautions = columns_of_table - 1;

std::string ends_of(const Piece& piece) {
    const std::string a(piece.end_a.empty() ? "bare" : piece.end_a);
    const std::string b(piece.end_b.empty() ? "bare" : piece.end_b);
    return piece.line != nullptr && piece.line->ends.closing
               ? std::string(piece.line->end(*piece.line->ends.closing).kind->declaration.name)
               : a + " / " + b;
}

TableRow row_of(const LikeLines& lines, UnitSystem units) {
    const Piece& piece = lines.piece();
    const bool cut = piece.fault == nullptr;
    TableRow row;
    row[0] = piece.name.empty() ? "(no name)" : std::string(piece.name);
    row[1] = boats_in_words(lines.boats());
    row[2] = std::to_string(lines.pieces());
    row[3] = cut ? rope_in_words(*piece.line->rope, piece.colour, units) : std::string(piece.rope);
    row[4] = piece.finished ? metre_cell(*piece.finished, units) : "";
    row[5] = cut ? metre_cell(piece.cut, units) : "not cut";
    row[6] = ends_of(piece);
    row[7] = piece.cautions.empty() ? "" : std::to_string(piece.cautions.size());
    for (std::string& cell : row) {
        cell = show_controls(cell);
    }
    return row;
}

std::string with_unit(std::string_view heading, UnitSystem units) {
    const std::string_view unit = metre_unit(units);
    return std::string(heading) + (unit.empty() ? "" : " [" + std::string(unit) + ']');
}

std::vector<std::string> lines_of(const std::string& cell, std::size_t width) {
    std::vector<std::string> lines;
    const std::string text = wrapped(cell, width, 0, 0);
    for (std::size_t start = 0; start <= text.size();) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        lines.push_back(text.substr(start, end - start));
        start = end + 1;
    }
    return lines;
}

void write_row(Output& output, std::span<const TableColumn> columns, const TableRow& row) {
    std::vector<std::vector<std::string>> cells;
    std::size_t height = 1;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells.push_back(lines_of(row.at(i), columns[i].width));
        height = std::max(height, cells.back().size());
    }
    for (std::size_t y = 0; y < height; ++y) {
        std::string line;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const std::string text = y < cells[i].size() ? cells[i][y] : std::string();
            const std::string blanks(
                columns[i].width - std::min(columns[i].width, display_width(text)), ' ');
            line += (i == 0 ? "" : "  ") + (columns[i].right ? blanks + text : text + blanks);
        }
        line.resize(line.find_last_not_of(' ') + 1);
        output.write(line + '\n');
    }
}

/// What is said below the table, with the rows that it is said of.
struct Note {
    std::string text;
    std::vector<std::string> names;
};

void add_note(std::vector<Note>& notes, std::string text, std::string_view name) {
    const auto known = std::ranges::find(notes, text, &Note::text);
    if (known != notes.end()) {
        if (std::ranges::find(known->names, name) == known->names.end()) {
            known->names.emplace_back(name);
        }
    } else {
        notes.push_back({std::move(text), {std::string(name)}});
    }
}

void write_notes(Output& output, std::string_view heading, const std::vector<Note>& notes) {
    constexpr std::size_t width = 100;
    if (notes.empty()) {
        return;
    }
    output.write('\n');
    output.write(heading);
    output.write('\n');
    for (const Note& note : notes) {
        std::string names;
        for (const std::string& name : note.names) {
            names += (names.empty() ? "" : ", ") + name;
        }
        output.write("  " + wrapped(show_controls(names + ": " + note.text), width, 2, 4) + '\n');
    }
}

} // namespace

void write_table(Output& output, const std::deque<LikeLines>& lines, UnitSystem units,
                 CitationLog& citing) {
    std::array<TableColumn, columns_of_table> columns{
        TableColumn{"line", false, 28},
        TableColumn{"boat", false, 18},
        TableColumn{"make", true},
        TableColumn{"rope", false, 34},
        TableColumn{with_unit("finished", units), true},
        TableColumn{with_unit("cut", units), true},
        TableColumn{"ends", false, 34},
        TableColumn{"cautions", true}};
    std::vector<TableRow> rows;
    std::vector<Note> cautions;
    std::vector<Note> refused;
    for (const LikeLines& each : lines) {
        const Piece& piece = each.piece();
        rows.push_back(row_of(each, units));
        const std::string& name = rows.back()[0];
        if (piece.fault != nullptr) {
            add_note(refused, piece.fault->text, name);
        }
        for (const PieceCaution& caution : piece.cautions) {
            std::string text;
            append_caution_with_end(text, piece, caution, units, citing);
            add_note(cautions, std::move(text), name);
        }
    }
    TableRow headings;
    for (std::size_t i = 0; i < columns_of_table; ++i) {
        columns.at(i).width = columns.at(i).heading.size();
        headings.at(i) = columns.at(i).heading;
        for (const TableRow& row : rows) {
            columns.at(i).width = std::max(columns.at(i).width,
                                           std::min(columns.at(i).most, display_width(row.at(i))));
        }
    }
    const bool any_caution = !cautions.empty();
    const auto shown = std::span(columns).first(columns_of_table - (any_caution ? 0 : 1));
    write_row(output, shown, headings);
    for (const TableRow& row : rows) {
        write_row(output, shown, row);
    }
    write_notes(output, "Not cut:", refused);
    write_notes(output, "Cautions:", cautions);
}

} // namespace libsplice
